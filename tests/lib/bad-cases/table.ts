import { optionalColumn, readCsv, readLength, requiredColumn } from "../../../lib/index.ts";
import { fixed } from "./leaves.ts";
import { but, leaf, list, nothing, record, variant } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const text = (good: string) =>
  leaf(good, [
    ...nothing({}),
    variant("a number", 7, "unreadable"),
    variant("a record", {}, "unreadable"),
  ]);

/** A table of text, with rows that are none tried in their place. */
export const tableOf = (csv: string, name: string) => {
  const { columns, rows, decimal } = readCsv(csv, name);
  return record({
    name: fixed(name),
    columns: leaf(columns, [
      ...nothing({}),
      variant("text", "bed", "unreadable"),
      variant("numbers", [1], "unreadable"),
    ]),
    rows: list(
      rows.map((row) =>
        leaf(row, [
          ...nothing({}),
          variant("text", "A", "unreadable"),
          variant("numbers", [1], "unreadable"),
        ]),
      ),
      { empty: "fine" },
    ),
    decimal: fixed(decimal),
    kind: fixed("table"),
  });
};

const read = leaf(readLength, []);
const columns = record({
  bed: fixed(requiredColumn(readLength)),
  note: fixed(optionalColumn(readLength)),
});

export const tableCases: FolderCases = {
  optionalColumn: {
    takes: {
      read: but(
        read,
        variant("nothing", undefined, "missing"),
        variant("text", "readLength", "unreadable"),
      ),
    },
  },
  readCsv: {
    takes: {
      text: leaf("bed,length\nA,8 ft", [
        ...nothing({}),
        variant("empty text", "", "fine"),
        variant("blanks", " \n\t\n", "fine"),
        variant("a quote that never ends", '"', "fine"),
        variant("a number", 7, "unreadable"),
        variant("a record", {}, "unreadable"),
        variant("a list", ["bed"], "unreadable"),
      ]),
      name: text("beds"),
    },
  },
  readRows: { takes: { table: tableOf("bed,note\n8 ft,1 ft", "list"), columns } },
  requiredColumn: {
    takes: {
      read: but(
        read,
        variant("nothing", undefined, "missing"),
        variant("text", "readLength", "unreadable"),
      ),
    },
  },
  writeCsv: { takes: { table: tableOf("bed,length\nA,8 ft", "beds") } },
};
