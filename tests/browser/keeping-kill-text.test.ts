import { describe, expect, it } from "vitest";
import { openCell, openOwn, own, sums } from "./editing.ts";
import { useSite } from "./harness.ts";
import { keptUnder, killPage, typeAndKill } from "./kept.ts";

const site = useSite();
const notebooks = { "sums.md": sums };

/** Five killings one after another, each opening after it finding the formula that was typed. */
async function formulaLane(how: "closed" | "crashed"): Promise<void> {
  let page = await site.page({ notebooks });
  const context = page.context();
  await openOwn(page, site);
  const { searchParams } = new URL(page.url());
  const file = searchParams.get("notebook") ?? "";
  let before = "6 * 7";
  for (let round = 0; round < 5; round += 1) {
    await openCell(page, "apart");
    const { least, most } = await typeAndKill(page, () => killPage(page, how), " + 1 + 2 + 3");
    page = await context.newPage();
    await page.goto(`${site.address}?notebook=${file}&write`);
    await own(page, "apart").locator(".cellname").waitFor();
    const { text } = (await keptUnder(page, `document:${file}`)) as { text: string };
    const formula = /"Apart"\n(.*)\n```/.exec(text)?.[1] ?? "";
    expect(formula.startsWith(before + least), `“${formula}” has all of “${before + least}”`).toBe(
      true,
    );
    expect((before + most).startsWith(formula)).toBe(true);
    before = formula;
  }
  await context.close();
}

describe("a tab that is killed while one writes in one's own notebook", () => {
  it("loses at most the last second of a formula, closed or crashed, ten times", async () => {
    await Promise.all([formulaLane("closed"), formulaLane("crashed")]);
  }, 120_000);
});
