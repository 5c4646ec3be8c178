import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readNotebook } from "../../../notebooks/engine/document/index.ts";
import { withTitle } from "../../../notebooks/engine/document/seldom.ts";

const titled = (text: string, title: string) => withTitle(readNotebook(text, "own.md"), title);

describe("a notebook gets another title", () => {
  it.each([
    ["# Old\n\nWords.\n", "# New\n\nWords.\n"],
    ["Words.\n\n  #   Old #\nMore.\n", "Words.\n\n  #   New\nMore.\n"],
    ["Old\n===\n\nWords.", "# New\n\nWords."],
    ["Old\r\nand long\r\n===\r\nWords.", "# New\r\nWords."],
    ["\uFEFF# Old\r\n", "\uFEFF# New\r\n"],
    ["> # Old\n> more\n", "> # New\n> more\n"],
    ["```\n# Old\n```\n", "# New\n\n```\n# Old\n```\n"],
    ["## Part\r\n", "# New\r\n\r\n## Part\r\n"],
    ["\uFEFFWords.", "\uFEFF# New\n\nWords."],
    ["", "# New\n"],
  ])("in %j", (text, wanted) => {
    expect(titled(text, " New ")).toBe(wanted);
  });

  it("that reads as it was typed, whatever signs are in it", () => {
    expect(titled("# Old\n", "8 x 4 #")).toBe("# 8 x 4 \\#\n");
    expect(titled("# Old\n", "*Mine* & `fig total`")).toBe("# \\*Mine\\* \\& \\`fig total\\`\n");
    expect(titled("# Old\n", "Beds, 2nd_try")).toBe("# Beds, 2nd_try\n");
    expect(() => titled("# Old\n", " ")).toThrow("at least one letter");
  });

  it("and keeps its cells and all else, whatever it held", () => {
    const part = fc.constantFrom(
      "# A\n",
      "B\n===\n",
      "```js cell a\n1\n```\n",
      "\r\n",
      "- ",
      "> ",
      "x\n",
      "```\n",
    );
    const text = fc.array(part, { maxLength: 8 }).map((parts) => parts.join(""));
    const title = fc
      .string({ minLength: 1, unit: "grapheme-ascii" })
      .filter((one) => one.trim() !== "");
    fc.assert(
      fc.property(text, title, (before, wanted) => {
        const words = wanted.trim().replace(/\s+/g, " ");
        const after = titled(before, wanted);
        expect(readNotebook(after, "own.md").title).toBe(words);
        const made = (of: string) =>
          readNotebook(of, "own.md").blocks.flatMap((one) =>
            one.kind === "cell" ? [one.text] : [],
          );
        expect(made(after)).toEqual(made(before));
        expect(titled(after, wanted)).toBe(after);
      }),
    );
  });
});
