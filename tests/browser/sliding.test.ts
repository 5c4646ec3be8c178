import { describe, expect, it } from "vitest";
import { again, answer, cell, field, openNotebook, settled, useSite } from "./harness.ts";
import { violations } from "./violations.ts";

const years = `# Years

\`\`\`js cell twice pinned "Twice"
2 * year
\`\`\`

\`\`\`js cell part pinned "Part"
100 * share
\`\`\`

\`\`\`js cell year "Year shown"
countEntry("3", { max: 15, slide: 1 })
\`\`\`

\`\`\`js cell share "Share"
percentEntry("30 %", { max: "60 %", slide: 5 })
\`\`\`
`;

describe("an entry with a slide", () => {
  const site = useSite();

  async function opened() {
    const page = await site.page({ notebooks: { "years.md": years } });
    await openNotebook(page, site, "years.md");
    await settled(page);
    return { page, slide: cell(page, "years.md", "year").locator("input[type=range]") };
  }

  it("is moved by keys and by the pointer; the field and the answers follow", again, async () => {
    const { page, slide } = await opened();
    expect(await slide.getAttribute("max")).toBe("15");
    await slide.focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => field(page, "year", "years.md").first().inputValue()).toBe("4");
    await expect.poll(() => answer(page, "twice").textContent()).toContain("8");
    const place = await slide.boundingBox();
    if (!place) throw new Error("the slide has no place");
    await page.mouse.click(place.x + place.width - 4, place.y + place.height / 2);
    await expect.poll(() => answer(page, "twice").textContent()).toContain("30");
    expect(await slide.inputValue()).toBe("15");
    await page.getByRole("button", { name: "Undo" }).first().click();
    await expect.poll(() => answer(page, "twice").textContent()).toContain("6");
    await expect.poll(() => slide.inputValue()).toBe("3");
  });

  it("follows what is typed, and stays where it was over what is refused", again, async () => {
    const { page, slide } = await opened();
    await field(page, "year", "years.md").first().fill("12");
    await expect.poll(() => slide.inputValue()).toBe("12");
    await field(page, "year", "years.md").first().fill("many");
    await expect.poll(() => cell(page, "years.md", "year").textContent()).toMatch(/number/);
    expect(await slide.inputValue()).toBe("12");
    expect(await slide.getAttribute("aria-valuetext")).toBe("12");
    const share = cell(page, "years.md", "share").locator("input[type=range]");
    expect(await share.inputValue()).toBe("30");
    expect(await share.getAttribute("aria-valuetext")).toBe("30 %");
    await share.focus();
    await page.keyboard.press("ArrowLeft");
    await expect.poll(() => answer(page, "part").textContent()).toContain("25");
  });

  it("is named for everyone", again, async () => {
    const { page } = await opened();
    expect(await violations(page)).toEqual([]);
    expect(await page.getByRole("slider", { name: "Year shown, slide" }).count()).toBe(1);
  });
});
