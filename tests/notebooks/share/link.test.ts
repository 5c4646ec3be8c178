import { gzipSync } from "node:zlib";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fromLetters, toLetters } from "../../../notebooks/engine/share/base64url.ts";
import { checksum } from "../../../notebooks/engine/share/checksum.ts";
import { isLink, readLink, writeLink } from "../../../notebooks/engine/share/index.ts";
import { takeSteps } from "../../../notebooks/engine/share/row-steps.ts";
import type { CellId, TableText } from "../../../notebooks/engine/types/index.ts";
import { linkParts } from "./links.ts";

function written(parts: Parameters<typeof writeLink>[0]): string {
  const link = writeLink(parts);
  if (!link.ok) throw new Error(link.words);
  return link.text;
}

describe("the letters and the checksum of a link", () => {
  it("are those of RFC 4648 and RFC 1952, as Node has them", () => {
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        expect(toLetters(bytes)).toBe(Buffer.from(bytes).toString("base64url"));
        expect(fromLetters(toLetters(bytes))).toEqual(bytes);
        // A gzip file ends with the checksum and the length of what is in it.
        expect(checksum(bytes)).toBe(gzipSync(bytes).readUInt32LE(gzipSync(bytes).length - 8));
      }),
    );
    // The check value of CRC-32 in published lists of such sums.
    expect(checksum(Buffer.from("123456789"))).toBe(0xcbf43926);
  });

  it("give nothing for a text that is no such letters, or has bits to spare", () => {
    for (const text of ["A", "AB", "AAB", "AA==", "A+/A", "Ä"]) {
      const bytes = fromLetters(text);
      if (bytes !== undefined) expect(toLetters(bytes)).toBe(text);
    }
    expect(fromLetters("AB")).toBeUndefined();
  });
});

describe("a link", () => {
  it("holds all that was entered, whatever it is", () => {
    fc.assert(
      fc.property(linkParts, (parts) => {
        const reading = readLink(`#${written(parts)}`);
        if (!reading.ok) throw new Error(reading.words);
        const { link } = reading;
        expect([link.file, link.version, link.own]).toEqual([
          parts.file,
          parts.version,
          parts.own ?? [],
        ]);
        const back = new Map<string, string | TableText>();
        for (const { file, name, text } of link.entries) back.set(`${file}#${name}`, text);
        for (const { file, name, steps } of link.tables) {
          const from = parts.defaults.get(`${file}#${name}`);
          const table = from && takeSteps(from, steps);
          if (table) back.set(`${file}#${name}`, table);
        }
        for (const [id, value] of Object.entries(parts.entered)) {
          const same = JSON.stringify(parts.defaults.get(id as CellId)) === JSON.stringify(value);
          expect(back.get(id)).toEqual(same ? undefined : value);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("is refused in words when anything in it was changed or cut off", () => {
    fc.assert(
      fc.property(linkParts, fc.nat(), fc.nat({ max: 63 }), (parts, place, other) => {
        const text = written(parts);
        const start = text.indexOf(".") + 1;
        const at = start + (place % (text.length - start));
        const letter = toLetters(new Uint8Array([other << 2]))[0] ?? "";
        if (letter !== text[at]) {
          const altered = readLink(text.slice(0, at) + letter + text.slice(at + 1));
          expect(altered).toEqual({ ok: false, words: expect.stringContaining("not whole") });
        }
        expect(readLink(text.slice(0, at)).ok).toBe(false);
      }),
      { numRuns: 300 },
    );
  });

  it("is never made of chance", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.uint8Array().map(toLetters)), (text) => {
        expect(readLink(text).ok).toBe(false);
        expect(readLink(`open=1.${text}`).ok).toBe(false);
      }),
      { numRuns: 500 },
    );
  });

  it("of a newer kind is told apart from a broken one", () => {
    expect(readLink("#open=2.AAAA")).toEqual({
      ok: false,
      words: expect.stringContaining("newer version"),
    });
    expect(isLink("#open=2.AAAA")).toBe(true);
    expect(isLink("#open-beds")).toBe(false);
    expect(isLink("#cell-rebuild-md-total")).toBe(false);
  });

  it("stays short where little was changed", () => {
    const entered = {
      "rebuild.md#kerf": "3/32 in",
      "rebuild.md#timberChoice": "cedar",
      "garden.md#payload": "900 lb",
    } as const;
    const text = written({ file: "rebuild.md", version: "0a1b2c3d", entered, defaults: new Map() });
    expect(text.length).toBeLessThan(120);
  });
});
