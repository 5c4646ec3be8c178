import { describe, expect, it } from "vitest";
import { documentsOf, readNotebook } from "../../../notebooks/engine/document/index.ts";
import {
  applyLink,
  readLink,
  withLeftOut,
  writeLink,
} from "../../../notebooks/engine/share/index.ts";
import type { CellId, Entered, TableText } from "../../../notebooks/engine/types/index.ts";

const text = `# Plot

\`\`\`js cell width "Width"
lengthEntry("4 ft")
\`\`\`

\`\`\`js cell area
width * width
\`\`\`

\`\`\`csv table beds "Beds"
bed,length
A,8 ft
B,6 ft
C,4 ft
\`\`\`
`;
const documents = documentsOf({ "plot.md": text });

const table = (rows: readonly (readonly string[])[], columns = ["bed", "length"]): TableText => ({
  kind: "table",
  name: "beds",
  columns,
  rows,
  decimal: ".",
});
const given = table([
  ["A", "8 ft"],
  ["B", "6 ft"],
  ["C", "4 ft"],
]);
const id: CellId = "plot.md#beds";
const defaults = new Map([[id, given]]);

function linkOf(entered: Entered) {
  const link = writeLink({ file: "plot.md", version: "00000000", entered, defaults });
  const reading = link.ok ? readLink(link.text) : link;
  if (!reading.ok) throw new Error(reading.words);
  return reading.link;
}

describe("applying a link", () => {
  it("enters what fits", () => {
    const changed = table([
      ["A", "8 ft"],
      ["C", "5 ft"],
      ["D", "10 ft"],
    ]);
    const applied = applyLink(
      linkOf({ [id]: changed, "plot.md#width": "3 ft" }),
      documents,
      defaults,
    );
    expect(applied).toEqual({ entered: { [id]: changed, "plot.md#width": "3 ft" }, left: [] });
  });

  it("carries a change of one row as that row, not as the table", () => {
    const link = linkOf({ [id]: table([...given.rows.slice(0, 2), ["C", "5 ft"]]) });
    expect(link.tables[0]?.steps.rows).toEqual([
      { step: "keep", count: 2 },
      { step: "change", fields: [{ column: 1, text: "5 ft" }] },
    ]);
  });

  it("carries new columns without repeating the others", () => {
    const wider = table(
      given.rows.map(([bed = "", length = ""]) => [bed, bed === "B" ? "2" : "", length]),
      ["bed", "count", "length"],
    );
    const link = linkOf({ [id]: wider });
    expect(link.tables[0]?.steps.columns).toEqual([0, "count", 1]);
    expect(applyLink(link, documents, defaults).entered).toEqual({ [id]: wider });
  });

  it("lists what has no place any more, with its text and the reason, and enters none of it", () => {
    const link = linkOf({
      "plot.md#gone": "12",
      "plot.md#area": "9",
      "plot.md#beds": table([["A", "7 ft"]]),
      "other.md#x": "1",
      "plot.md#__proto__": "{}",
    });
    const others = new Map([[id, table([["Z", "1 ft"]])]]);
    const { entered, left } = applyLink(link, documents, others);
    expect(entered).toEqual({});
    expect(left.map(({ id: of, why }) => [of, why])).toEqual([
      ["plot.md#gone", "There is no gone in plot.md any more."],
      ["plot.md#area", "area is worked out here, not entered."],
      ["plot.md#__proto__", "There is no __proto__ in plot.md any more."],
      ["other.md#x", "This notebook uses no other.md."],
      ["plot.md#beds", expect.stringContaining("not those the link was made from")],
    ]);
    expect(left[0]?.what).toBe("12");
    expect(left[4]?.what).toContain("7 ft");
  });

  it("takes an entry for a table and a table for an entry as neither", () => {
    const link = linkOf({ "plot.md#beds": "x", "plot.md#width": given });
    expect(applyLink(link, documents, defaults)).toMatchObject({
      entered: {},
      left: [{ id: "plot.md#beds" }, { id: "plot.md#width" }],
    });
  });

  it("keeps what did not fit as text that is nothing but text", () => {
    const hostile = "```\n```js cell evil\nfetch('x')\n```\n````\n# Not a heading";
    const left = [{ id: "plot.md#gone" as const, title: "Gone", what: hostile, why: "No gone." }];
    const kept = readNotebook(withLeftOut(text, left), "plot.md");
    expect(kept.blocks.filter(({ kind }) => kind === "cell")).toHaveLength(2);
    expect(withLeftOut(text, left)).toContain("fetch('x')");
    expect(kept.problems).toEqual([]);
    expect(withLeftOut(text, [])).toBe(text);
  });
});
