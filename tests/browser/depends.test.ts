import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { again, openNotebook, type Site, settled, useSite } from "./harness.ts";
import { violations } from "./violations.ts";

const site = useSite();
/** A small notebook: two entries, a step between, an answer, and something apart. */
const small = `# Small

\`\`\`js cell long "Length"
lengthEntry("8 ft")
\`\`\`

\`\`\`js cell wide "Width"
lengthEntry("4 ft")
\`\`\`

\`\`\`js cell half quiet "Half the width"
wide / 2
\`\`\`

\`\`\`js cell area pinned "Area"
long * half
\`\`\`

\`\`\`js cell apart "Apart"
foot * 3
\`\`\`
`;

const notebooks = { "small.md": small };
const pane = (page: Page) => page.getByRole("dialog");
const node = (page: Page, name: string, file = "small.md") =>
  pane(page).locator(`.node[data-id="${file}#${name}"]`);

async function openPicture(page: Page, of: Site, file = "small.md"): Promise<void> {
  await openNotebook(page, of, file);
  await settled(page);
  await page.locator("details.acts > summary").click();
  const act = page.locator("details.acts").getByRole("button", { name: "What depends on what" });
  await act.click();
  await pane(page).locator(".dependpic svg, .dependlist").waitFor();
}

describe("the picture of what depends on what", again, () => {
  it("shows cells with what feeds them, quiet steps when asked", async () => {
    const page = await site.page({ notebooks });
    await openPicture(page, site);
    expect(await pane(page).locator(".node").count()).toBe(4);
    expect(await pane(page).locator(".ways path").count()).toBe(2);
    expect(await node(page, "long").getAttribute("class")).toContain("entry");
    expect(await node(page, "area").getAttribute("class")).toContain("pinned");
    expect(await node(page, "area").getAttribute("aria-label")).toBe(
      "Area, pinned, takes 2, gives to nothing",
    );
    await pane(page).getByLabel("Steps between too").check();
    await node(page, "half").waitFor();
    expect(await pane(page).locator(".ways path").count()).toBe(3);
    await page.context().close();
  });

  it("sets off what a cell takes and gives to, by pointer and by keys, and says how many", async () => {
    const page = await site.page({ notebooks });
    await openPicture(page, site);
    await pane(page).getByLabel("Steps between too").check();
    await node(page, "half").hover();
    await pane(page).getByText("Half the width: takes 1, gives to 1", { exact: true }).waitFor();
    const said = pane(page).getByRole("status");
    expect(await said.textContent()).toBe("Half the width: takes 1, gives to 1");
    const is = async (name: string) => node(page, name).getAttribute("data-is");
    expect([await is("half"), await is("wide"), await is("area"), await is("apart")]).toEqual([
      "it",
      "near",
      "near",
      null,
    ]);
    expect(await pane(page).locator('.ways path[data-is="near"]').count()).toBe(2);
    await page.mouse.move(2, 2);
    await pane(page).getByLabel("Steps between too").focus();
    await page.keyboard.press("Tab");
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute("data-id"));
    expect(await focused()).toBe("small.md#area");
    await page.keyboard.press("ArrowLeft");
    expect(["small.md#half", "small.md#long"]).toContain(await focused());
    await node(page, "half").focus();
    await page.keyboard.press("ArrowLeft");
    expect(await focused()).toBe("small.md#wide");
    await page.keyboard.press("ArrowRight");
    expect(await focused()).toBe("small.md#half");
    await page.keyboard.press("ArrowRight");
    expect(await focused()).toBe("small.md#area");
    await page.context().close();
  });

  it("goes to the cell on the page at Enter", async () => {
    const page = await site.page({ notebooks });
    await openPicture(page, site);
    await node(page, "wide").focus();
    await page.keyboard.press("Enter");
    await pane(page).waitFor({ state: "detached" });
    const field = page.locator("#cell-small-md-wide input");
    expect(await field.evaluate((one) => one === document.activeElement)).toBe(true);
    await page.context().close();
  });

  it("shows what feeds one cell, from its working", async () => {
    const page = await site.page({ notebooks });
    await openNotebook(page, site, "small.md");
    await settled(page);
    await page.locator("#cell-small-md-area .working summary").click();
    await page.getByRole("button", { name: "What feeds this" }).click();
    await node(page, "area").waitFor();
    expect(await pane(page).locator(".node").count()).toBe(3);
    expect(await node(page, "apart").count()).toBe(0);
    await pane(page).getByRole("button", { name: "Show the whole notebook" }).click();
    await node(page, "apart").waitFor();
    await page.context().close();
  });

  it("has the same as a table", async () => {
    const page = await site.page({ notebooks });
    await openPicture(page, site);
    await pane(page).getByText("The same as a table").click();
    const row = pane(page).getByRole("row", { name: /^Area/ });
    expect(
      (await row.locator("td").allTextContents()).map((text) => text.split("; ").sort()),
    ).toEqual([["Length", "Width"], [""]]);
    await page.context().close();
  });

  it("can be read for the main notebook: no cell over another, those it uses by file", async () => {
    const page = await site.page();
    await openPicture(page, site, "rebuild.md");
    const boxes = await pane(page)
      .locator(".node > .ground")
      .evaluateAll((rects) => rects.map((rect) => rect.getBoundingClientRect().toJSON()));
    expect(boxes.length).toBeGreaterThan(60);
    const over = boxes.filter((a, at) =>
      boxes
        .slice(at + 1)
        .some((b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom),
    );
    expect(over).toEqual([]);
    const clipped = await pane(page)
      .locator(".node")
      .evaluateAll((nodes) =>
        nodes
          .filter((one) => {
            const ground = one.querySelector(".ground")?.getBoundingClientRect();
            return [...one.querySelectorAll("text")].some(
              (text) => ground && text.getBoundingClientRect().right > ground.right + 1,
            );
          })
          .map(({ textContent }) => textContent),
      );
    expect(clipped).toEqual([]);
    expect(await pane(page).locator(".band text").allTextContents()).toEqual(["From The garden"]);
    await page.context().close();
  }, 60_000);

  it.each([
    ["wide", { viewport: { width: 1280, height: 900 } }],
    ["narrow", { viewport: { width: 360, height: 740 } }],
    ["dark", { viewport: { width: 1024, height: 800 }, colorScheme: "dark" as const }],
  ])("has nothing for axe to mend, and fits its width, %s", async (_, options) => {
    const page = await site.page({ ...options, notebooks, reducedMotion: "reduce" });
    await openPicture(page, site);
    await page.evaluate(() => {
      for (const details of document.querySelectorAll<HTMLDetailsElement>("dialog details"))
        details.open = true;
    });
    expect(await violations(page)).toEqual([]);
    const over = await pane(page).evaluate((one) => one.scrollWidth - one.clientWidth);
    expect(over).toBeLessThanOrEqual(0);
    await page.context().close();
  });

  it("lists the layers where it is narrow, each cell with what it takes", async () => {
    const page = await site.page({ notebooks, viewport: { width: 360, height: 740 } });
    await openPicture(page, site);
    const area = pane(page).locator('.dependlist details[data-id="small.md#area"]');
    expect(await area.locator("small").textContent()).toBe("takes 2, gives to nothing");
    await area.locator("summary").click();
    await area.filter({ hasText: /Takes: (Length; Width|Width; Length)/ }).waitFor();
    await area.getByRole("button", { name: "Go to it" }).click();
    await pane(page).waitFor({ state: "detached" });
    await page.context().close();
  });
});

describe("in the writing view", again, () => {
  it("what feeds the cell that is looked at is marked in words, and what takes it", async () => {
    const page = await site.page({ notebooks });
    await openNotebook(page, site, "small.md");
    await settled(page);
    const slot = (name: string) => page.locator(`#cell-small-md-${name}`);
    await slot("area").hover();
    expect(await page.locator("[data-feeds]").count()).toBe(0);
    await page.locator(".top label", { hasText: "Write" }).click();
    await slot("half").locator(".cellname").waitFor();
    await page.locator(".top label", { hasText: "Write" }).hover();
    await expect
      .poll(async () => {
        await slot("half").locator(".cellname").hover();
        return slot("wide").getAttribute("data-feeds");
      })
      .toBe("feeds Half the width");
    expect(await slot("area").getAttribute("data-feeds")).toBe("takes Half the width");
    expect(await slot("long").getAttribute("data-feeds")).toBe(null);
    await slot("area").locator(".cellname").focus();
    await page.locator("p[role=status]", { hasText: "Area: takes 2, gives to nothing" }).waitFor({
      state: "attached",
    });
    expect(await slot("long").getAttribute("data-feeds")).toBe("feeds Area");
    await page.context().close();
  });
});
