import { describe, expect, it } from "vitest";
import { field, openNotebook, useSite } from "./harness.ts";
import { diary, killPage, typeAndKill } from "./kept.ts";

const site = useSite();
const notebooks = { "diary.md": diary };

/** Five killings one after another, each opening after it finding what was typed. */
async function lane(how: "closed" | "crashed"): Promise<void> {
  let page = await site.page({ notebooks });
  const context = page.context();
  for (let round = 0; round < 5; round += 1) {
    await openNotebook(page, site, "diary.md");
    const line = field(page, "line", "diary.md");
    await line.fill("");
    await line.focus();
    const { least, most } = await typeAndKill(
      page,
      () => killPage(page, how),
      "dug the north bed over ",
    );
    page = await context.newPage();
    await openNotebook(page, site, "diary.md");
    const kept = await field(page, "line", "diary.md").inputValue();
    expect(kept.startsWith(least), `“${kept}” has all of “${least}”`).toBe(true);
    expect(most.startsWith(kept), `“${kept}” is the beginning of “${most}”`).toBe(true);
  }
  await context.close();
}

describe("a tab that is killed while one types", () => {
  it("loses at most the last second of an entry, closed or crashed, ten times", async () => {
    await Promise.all([lane("closed"), lane("crashed")]);
  }, 120_000);
});
