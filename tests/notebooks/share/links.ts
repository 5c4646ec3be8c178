import fc from "fast-check";
import type { LinkParts } from "../../../notebooks/engine/share/index.ts";
import type { CellId, TableText } from "../../../notebooks/engine/types/index.ts";

const cellName = fc.oneof(
  fc.stringMatching(/^[a-zA-Z_][a-zA-Z0-9_]{0,11}$/),
  fc.constantFrom("__proto__", "constructor", "toString", "größe"),
);
const fileName = fc.constantFrom(
  "rebuild.md",
  "garden.md",
  "my-plot.md",
  "__proto__.md",
  "Beet.md",
);
const field = fc.oneof(
  fc.string(),
  fc.string({ unit: "grapheme" }),
  fc.constantFrom("", "8 ft", "4"),
);

/** A table, and what somebody might make of it. */
export const twoTables = fc
  .record({
    columns: fc.array(field, { maxLength: 5 }),
    kept: fc.array(fc.array(field, { minLength: 5, maxLength: 5 }), { maxLength: 12 }),
    others: fc.array(fc.array(field, { minLength: 6, maxLength: 6 }), { maxLength: 6 }),
    order: fc.array(fc.nat({ max: 17 }), { maxLength: 20 }),
    edits: fc.array(fc.tuple(fc.nat({ max: 19 }), fc.nat({ max: 4 }), field), { maxLength: 6 }),
    moreColumns: fc.option(field, { nil: undefined }),
    decimal: fc.constantFrom(".", ","),
  })
  .map(({ columns, kept, others, order, edits, moreColumns, decimal }) => {
    const before = tableOf(columns, kept);
    const width = moreColumns === undefined ? columns : [moreColumns, ...columns.slice(1)];
    const all = [...kept, ...others];
    const rows = order.flatMap((at) => (all[at] ? [[...all[at]]] : []));
    for (const [row, column, text] of edits) {
      const edited = rows[row];
      if (edited) edited[column] = text;
    }
    return { before, after: { ...tableOf(width, rows), decimal } as TableText };
  });

function tableOf(columns: readonly string[], rows: readonly (readonly string[])[]): TableText {
  const cut = rows.map((row) => row.slice(0, columns.length));
  return { kind: "table", name: "beds", columns, rows: cut, decimal: "." };
}

/** Anything that somebody might have entered. */
export const linkParts: fc.Arbitrary<LinkParts> = fc
  .record({
    file: fileName,
    version: fc.stringMatching(/^[0-9a-f]{8}$/),
    entries: fc.array(fc.tuple(fileName, cellName, field), { maxLength: 15 }),
    tables: fc.array(fc.tuple(fileName, cellName, twoTables), { maxLength: 3 }),
    own: fc.option(fc.string(), { nil: undefined }),
  })
  .map(({ file, version, entries, tables, own }) => {
    const entered = new Map<CellId, string | TableText>();
    const defaults = new Map<CellId, TableText>();
    for (const [of, name, text] of entries) entered.set(`${of}#${name}`, text);
    for (const [of, name, { before, after }] of tables) {
      entered.set(`${of}#${name}`, { ...after, name });
      defaults.set(`${of}#${name}`, { ...before, name });
    }
    return {
      file,
      version,
      entered: Object.fromEntries(entered),
      defaults,
      ...(own === undefined ? {} : { own: [{ file, text: own }] }),
    };
  });
