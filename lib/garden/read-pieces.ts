import type { Section } from "../lumber/index.ts";
import { foot, inch, type Length, over, times } from "../measure/index.ts";
import {
  optionalColumn,
  readRows,
  requiredColumn,
  type TableReading,
  type TableText,
} from "../table/index.ts";
import { countCell, lengthCell, nameCell, sectionCell, timberCell } from "./table-cells.ts";

/** Pieces listed by hand, all alike. */
export interface HandPiece {
  readonly piece: string;
  readonly section: Section;
  readonly length: Length;
  readonly count: number;
  readonly timber: string | undefined;
}

export const pieceColumns = {
  piece: requiredColumn(nameCell),
  section: requiredColumn(sectionCell),
  length: requiredColumn(lengthCell(over(inch, 2), times(foot, 100))),
  count: optionalColumn(countCell(1, 10_000)),
  timber: optionalColumn(timberCell),
};

/**
 * Reads a table of pieces listed by hand: `piece`, `section` and `length`, and if wanted `count`
 * (blank: 1) and `timber`.
 *
 * @param table the table as text; lengths from 1/2 in to 100 ft
 * @rule like pieces in one row
 * @source common practice
 * @example
 * readPieces(readCsv("piece,section,length\nshelf,2x10,30 in", "pieces")).rows[0].count // => 1
 */
export function readPieces(table: TableText): TableReading<HandPiece> {
  const reading = readRows(table, pieceColumns);
  return { ...reading, rows: reading.rows.map(({ count = 1, ...rest }) => ({ ...rest, count })) };
}
