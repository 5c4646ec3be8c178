import type { Problem } from "../check/index.ts";
import type { Section } from "../lumber/index.ts";
import {
  type CalendarDate,
  foot,
  inch,
  type Length,
  printQuantity,
  times,
} from "../measure/index.ts";
import {
  optionalColumn,
  readRows,
  requiredColumn,
  type TableReading,
  type TableText,
} from "../table/index.ts";
import { headingOf } from "./heading-of.ts";
import { inRowOrder } from "./in-row-order.ts";
import { countCell, dateCell, lengthCell, sectionCell, timberCell } from "./table-cells.ts";

/** Boards that are there already, all alike. */
export interface KeptBoards {
  readonly section: Section;
  readonly length: Length;
  /** Usable length, once bad ends are off. */
  readonly sound: Length;
  readonly count: number;
  readonly timber: string | undefined;
  readonly bought: CalendarDate | undefined;
  readonly row?: number;
}

const boardLength = lengthCell(inch, times(foot, 60));

export const onHandColumns = {
  section: requiredColumn(sectionCell),
  length: requiredColumn(boardLength),
  count: optionalColumn(countCell(1, 10_000)),
  timber: optionalColumn(timberCell),
  bought: optionalColumn(dateCell),
  sound: optionalColumn(boardLength),
};

/**
 * Reads the table of boards kept: `section` and `length`, and if wanted `count` (blank: 1),
 * `timber`, `bought`, `sound` (the usable length; blank: all of it).
 *
 * @param table the table as text; lengths from 1 in to 60 ft, `sound` not over `length`
 * @rule sound length = what is written, or the whole length
 * @source common practice
 * @example
 * readOnHand(readCsv("section,length,sound\n2x12,8 ft,9 ft", "onHand")).problems[0].code // => "contradiction"
 */
export function readOnHand(table: TableText): TableReading<KeptBoards> {
  const reading = readRows(table, onHandColumns);
  const rows: (KeptBoards & { readonly row: number })[] = [];
  const problems: Problem[] = [...reading.problems];
  for (const { count = 1, sound, ...rest } of reading.rows) {
    if (sound !== undefined && sound.si > rest.length.si + 1e-9) {
      problems.push(tooSound(table, rest.row, { sound, length: rest.length }));
    } else rows.push({ ...rest, count, sound: sound ?? rest.length });
  }
  return { ...reading, rows, problems: inRowOrder(problems) };
}

function tooSound(
  table: TableText,
  row: number,
  found: { readonly sound: Length; readonly length: Length },
): Problem {
  return {
    code: "contradiction",
    path: [table.name, row, headingOf(table, "sound")],
    allowed: `at most the board's length, ${printQuantity(found.length)}`,
    received: printQuantity(found.sound),
    remedy: "Write the length that is left once bad ends are off.",
    also: [[table.name, row, headingOf(table, "length")]],
  };
}
