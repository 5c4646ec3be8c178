import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { formula, openCell, openOwn, own, sums, toWriting, write } from "./editing.ts";
import { again, answer, choose, field, openNotebook, useSite } from "./harness.ts";
import { diary, keptUnder } from "./kept.ts";

const site = useSite();
const notebooks = { "diary.md": diary, "sums.md": sums };

const entry = (page: Page, name: string) => field(page, name, "diary.md");

/** Two tabs on the same notebook. */
async function twoTabs() {
  const one = await site.page({ notebooks });
  const two = await one.context().newPage();
  for (const page of [one, two]) {
    page.setDefaultTimeout(20_000);
    await openNotebook(page, site, "diary.md");
  }
  return { one, two };
}

const kept = async (page: Page) =>
  ((await keptUnder(page, "entered:diary.md")) as { cells: unknown } | undefined)?.cells;

/** The pane of earlier states, with the first of them opened. */
async function firstState(page: Page) {
  await choose(page, "Earlier states");
  const first = page
    .getByRole("dialog", { name: "Earlier states" })
    .locator(".states > li")
    .first();
  await first.getByRole("button", { name: /Look at/ }).click();
  return first;
}

describe("two tabs on the same notebook", again, () => {
  it("keep what is typed in different cells, and show it to each other", async () => {
    const { one, two } = await twoTabs();
    await entry(one, "line").fill("dug the north bed");
    await entry(two, "other").fill("rain at noon");
    await expect.poll(() => entry(two, "line").inputValue()).toBe("dug the north bed");
    await expect.poll(() => entry(one, "other").inputValue()).toBe("rain at noon");
    // 17 letters and 12.
    for (const page of [one, two])
      await answer(page, "letters").filter({ hasText: "29" }).waitFor();
    await expect
      .poll(() => kept(one))
      .toEqual({ line: "dug the north bed", other: "rain at noon" });
    await one.context().close();
  });

  it("in the same cell never take it from under one's hands; what was typed over is kept", async () => {
    const { one, two } = await twoTabs();
    await entry(two, "line").focus();
    await entry(one, "line").fill("dug the north bed");
    await expect.poll(() => kept(two)).toEqual({ line: "dug the north bed" });
    expect(await entry(two, "line").inputValue()).toBe("");
    await two.keyboard.type("x");
    await two.locator(".troubles", { hasText: "Another tab had changed the same: line" }).waitFor();
    expect(await entry(two, "line").inputValue()).toBe("x");
    await expect.poll(() => kept(two)).toEqual({ line: "x" });
    const first = await firstState(two);
    await first.getByText("Written while another tab wrote the same").waitFor();
    expect(await first.locator(".differs > li").textContent()).toBe(
      "What was doneThendug the north bedNowx",
    );
    // The first tab has the focus in the field still, and takes the other's text when it leaves.
    expect(await entry(one, "line").inputValue()).toBe("dug the north bed");
    await entry(one, "other").focus();
    await expect.poll(() => entry(one, "line").inputValue()).toBe("x");
    await one.context().close();
  });

  it("show what the other typed when the field is left without a key", async () => {
    const { one, two } = await twoTabs();
    await entry(two, "line").focus();
    await entry(one, "line").fill("dug the north bed");
    await expect.poll(() => kept(two)).toEqual({ line: "dug the north bed" });
    expect(await entry(two, "line").inputValue()).toBe("");
    await entry(two, "other").focus();
    await expect.poll(() => entry(two, "line").inputValue()).toBe("dug the north bed");
    await one.context().close();
  });
});

describe("a notebook of one's own in two tabs", again, () => {
  /** The notebook in two tabs; the second hears nothing of the first where it is `deaf`. */
  async function ownInTwo({ deaf }: { deaf: boolean }) {
    const one = await site.page({ notebooks });
    await openOwn(one, site);
    const two = await one.context().newPage();
    two.setDefaultTimeout(20_000);
    if (deaf)
      await two.addInitScript(() => {
        BroadcastChannel.prototype.addEventListener = () => undefined;
      });
    await two.goto(one.url());
    await own(two, "total").locator(".n", { hasText: "24" }).first().waitFor();
    await toWriting(two);
    const file = new URL(one.url()).searchParams.get("notebook");
    const text = async () => {
      const record = (await keptUnder(one, `document:${file}`)) as { text: string };
      return record.text;
    };
    return { one, two, text };
  }

  it("takes what is written in either", async () => {
    const { one, two, text } = await ownInTwo({ deaf: false });
    await openCell(one, "twice");
    await write(one, "twice", "side * 3");
    // 3 x 8 ft and 8 ft more.
    await own(two, "total").locator(".n", { hasText: "32" }).first().waitFor();
    await openCell(two, "apart");
    await write(two, "apart", "6 * 8");
    await own(one, "apart").locator(".n", { hasText: "48" }).first().waitFor();
    await expect.poll(text).toMatch(/side \* 3[\s\S]*6 \* 8/);
    await one.context().close();
  });

  it("keeps both texts where they were written apart: one stands, one is an earlier state", async () => {
    const { one, two, text } = await ownInTwo({ deaf: true });
    await openCell(one, "twice");
    await write(one, "twice", "side * 3");
    await expect.poll(text).toContain("side * 3");
    await openCell(two, "twice");
    await write(two, "twice", "side * 5");
    await two.locator(".troubles", { hasText: "was changed in another tab as well" }).waitFor();
    expect(await text()).toContain("side * 3");
    await own(two, "total").locator(".n", { hasText: "32" }).first().waitFor();
    const first = await firstState(two);
    await first.getByText("Written while another tab wrote the same").waitFor();
    expect(await first.locator(".differs pre").allTextContents()).toEqual(["side * 5", "side * 3"]);
    await first.getByRole("button", { name: "Bring this back" }).click();
    await expect.poll(text).toContain("side * 5");
    // 5 x 8 ft and 8 ft more, in the other tab as well.
    await own(one, "total").locator(".n", { hasText: "48" }).first().waitFor();
    expect(await formula(two, "twice").textContent()).toBe("side * 5");
    await one.context().close();
  });
});
