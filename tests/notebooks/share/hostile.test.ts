import { deflateSync, strToU8 } from "fflate";
import { describe, expect, it } from "vitest";
import { toLetters } from "../../../notebooks/engine/share/base64url.ts";
import { checksum } from "../../../notebooks/engine/share/checksum.ts";
import { readLink } from "../../../notebooks/engine/share/index.ts";

/** A link as somebody might make it by hand, checksum and all. */
function linkOf(bytes: Uint8Array): string {
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(checksum(bytes));
  return `open=1.${toLetters(Buffer.concat([sum, bytes]))}`;
}

const linkOfLists = (lists: unknown) => linkOf(deflateSync(strToU8(JSON.stringify(lists))));
const version = "00000000";
const part = (...tables: unknown[]) => ["garden.md", version, [["garden.md", [], ...tables]]];

describe("a link made by a stranger with a good checksum", () => {
  it("is read where it is well made", () => {
    const reading = readLink(
      linkOfLists(["garden.md", version, [["garden.md", ["car", "900 lb"]]]]),
    );
    expect(reading).toMatchObject({
      ok: true,
      link: { file: "garden.md", entries: [{ file: "garden.md", name: "car", text: "900 lb" }] },
    });
  });

  const bad: Readonly<Record<string, unknown>> = {
    "no list": { file: "garden.md" },
    nothing: null,
    "a number": 7,
    "a missing part": ["garden.md", version],
    "a part too many": ["garden.md", version, [], [], 1],
    "a folder above": ["../garden.md", version, []],
    "a folder above, further in": ["a/../../b.md", version, []],
    "an address": ["https://example.org/a.md", version, []],
    "a scheme": ["javascript:alert(1).md", version, []],
    "a file that is no notebook": ["garden.html", version, []],
    "a place of another notebook": ["garden.md>rebuild.md", version, []],
    "a version that is none": ["garden.md", "1", []],
    "a text that is a number": ["garden.md", version, [["garden.md", ["car", 900]]]],
    "a name without a text": ["garden.md", version, [["garden.md", ["car"]]]],
    "a name with a mark in it": ["garden.md", version, [["garden.md", ["a#b", "1"]]]],
    "a name given twice": ["garden.md", version, [["garden.md", ["a", "1", "a", "2"]]]],
    "a text without end": ["garden.md", version, [["garden.md", ["a", "x".repeat(20_001)]]]],
    "too many entries": [
      "garden.md",
      version,
      [["garden.md", Array.from({ length: 4_002 }, (_, at) => `n${at}`)]],
    ],
    "rows that are a fraction": part(["beds", version, [0.5]]),
    "no rows at all": part(["beds", version, [0]]),
    "a column below the first": part(["beds", version, [[-1, "x"]]]),
    "a column far out": part(["beds", version, [[1e9, "x"]]]),
    "a row in a row": part(["beds", version, [[["x"]]]]),
    "another notebook's text first": ["garden.md", version, [], ["other.md", "# x"]],
  };
  for (const [what, lists] of Object.entries(bad))
    it(`is refused: ${what}`, () => {
      expect(readLink(linkOfLists(lists))).toEqual({ ok: false, words: expect.any(String) });
    });

  it("is refused where it unpacks to more than two million bytes, and costs no more than those", () => {
    const bomb = deflateSync(new Uint8Array(100_000_000), { level: 9 });
    const before = process.memoryUsage().arrayBuffers;
    expect(readLink(linkOf(bomb))).toEqual({ ok: false, words: expect.stringContaining("more") });
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20_000_000);
  });

  it("is refused where it is no packed text", () => {
    for (const text of ["", "{", "not packed", "\u0000"])
      expect(readLink(linkOf(Buffer.from(text))).ok).toBe(false);
    expect(readLink(linkOf(deflateSync(strToU8("[1")))).ok).toBe(false);
  });

  it("is refused where it is longer than any address", () => {
    expect(readLink(`open=1.${"A".repeat(200_001)}`)).toEqual({
      ok: false,
      words: expect.stringContaining("too long"),
    });
  });

  it("leaves the objects of the page alone", () => {
    const reading = readLink(
      linkOfLists(["__proto__.md", version, [["__proto__.md", ["__proto__", "polluted"]]]]),
    );
    expect(reading.ok).toBe(true);
    expect("polluted" in {}).toBe(false);
    expect(Object.getPrototypeOf({})).toBe(Object.prototype);
  });
});
