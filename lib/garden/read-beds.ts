import type { Problem } from "../check/index.ts";
import type { Lap, Section } from "../lumber/index.ts";
import { type CalendarDate, foot, inch, type Length, readYesNo, times } from "../measure/index.ts";
import {
  optionalColumn,
  readRows,
  requiredColumn,
  type TableReading,
  type TableText,
} from "../table/index.ts";
import { headingOf } from "./heading-of.ts";
import { inRowOrder } from "./in-row-order.ts";
import {
  choiceCell,
  countCell,
  dateCell,
  lengthCell,
  nameCell,
  noneAs,
  nothing,
  orNone,
  sectionCell,
  timberCell,
} from "./table-cells.ts";

/**
 * A bed as it is written down: only its name, length and width are there for certain. What is
 * undefined takes the garden's choice; a field that was filled wins, the word `none` included.
 */
export interface BedSpec {
  /** Unique; beds of a row with a count over 1 are, … */
  readonly bed: string;
  /** True outside sizes: 1 to 100 ft long, 6 in to 100 ft wide. */
  readonly length: Length;
  readonly width: Length;
  /** Boards stacked, 1 to 10. */
  readonly courses?: number | undefined;
  readonly section?: Section | undefined;
  readonly timber?: string | undefined;
  readonly lap?: Lap | undefined;
  /** Section of the seat board. */
  readonly cap?: Section | "none" | undefined;
  /** Stakes a side, 0 to 50. */
  readonly stakes?: number | undefined;
  readonly liner?: boolean | undefined;
  /** Settled depth wanted, and there: 0 to 20 ft. */
  readonly soilDepth?: Length | undefined;
  readonly depthNow?: Length | undefined;
  readonly built?: CalendarDate | undefined;
  /** Near-left corner on the plan. */
  readonly east?: Length | undefined;
  readonly north?: Length | undefined;
  readonly turned?: boolean | undefined;
  /** Row of the table it stands in; undefined for one that is not from a table. */
  readonly row?: number;
}

const depth = lengthCell(nothing, times(foot, 20));
const offset = lengthCell(times(foot, -5000), times(foot, 5000));

export const bedColumns = {
  bed: requiredColumn(nameCell),
  length: requiredColumn(lengthCell(foot, times(foot, 100))),
  width: requiredColumn(lengthCell(times(inch, 6), times(foot, 100))),
  count: optionalColumn(countCell(1, 10_000)),
  courses: optionalColumn(countCell(1, 10)),
  section: optionalColumn(sectionCell),
  timber: optionalColumn(timberCell),
  lap: optionalColumn(choiceCell(["sides", "ends"])),
  cap: optionalColumn(orNone(sectionCell)),
  stakes: optionalColumn(noneAs(countCell(0, 50), 0)),
  liner: optionalColumn(noneAs(readYesNo, false)),
  soil_depth: optionalColumn(noneAs(depth, nothing)),
  depth_now: optionalColumn(noneAs(depth, nothing)),
  built: optionalColumn(dateCell),
  east: optionalColumn(offset),
  north: optionalColumn(offset),
  turned: optionalColumn(readYesNo),
};

/**
 * Reads the table of beds: `bed`, `length` and `width`, and if wanted `count`, `courses`, `section`,
 * `timber`, `lap`, `cap`, `stakes`, `liner`, `soil_depth`, `depth_now`, `built`, `east`, `north`,
 * `turned`. A row with a count gives as many beds, named, … Each name may be there once.
 *
 * @param table the table as text; lengths with a unit, in the field or in the heading
 * @rule one bed a row, or as many as its count
 * @source common practice
 * @example
 * readBeds(readCsv("bed,length (ft),width (ft),count\nA,8,4,2", "beds")).rows.map((bed) => bed.bed) // => ["A-1","A-2"]
 */
export function readBeds(table: TableText): TableReading<BedSpec> {
  const reading = readRows(table, bedColumns);
  const rows: (BedSpec & { readonly row: number })[] = [];
  const problems: Problem[] = [...reading.problems];
  const rowOfName = new Map<string, number>();
  for (const written of reading.rows) {
    const { soil_depth, depth_now, count, ...rest } = written;
    const names =
      count === undefined || count === 1
        ? [rest.bed]
        : Array.from({ length: count }, (_, index) => `${rest.bed}-${index + 1}`);
    const taken = names.find((name) => rowOfName.has(name.toLowerCase()));
    if (taken !== undefined) {
      const first = rowOfName.get(taken.toLowerCase()) ?? 0;
      problems.push(notUnique(table, { row: rest.row, name: taken, first }));
      continue;
    }
    for (const bed of names) {
      rowOfName.set(bed.toLowerCase(), rest.row);
      rows.push({ ...rest, bed, soilDepth: soil_depth, depthNow: depth_now });
    }
  }
  // Rows that could not be read count as one bed each: their number is not known.
  const given =
    rows.length + (reading.given - reading.rows.length) + problems.length - reading.problems.length;
  return { ...reading, rows, given, problems: inRowOrder(problems) };
}

function notUnique(
  table: TableText,
  found: { readonly row: number; readonly name: string; readonly first: number },
): Problem {
  const heading = headingOf(table, "bed");
  return {
    code: "duplicate",
    path: [table.name, found.row, heading],
    allowed: "a name that no other bed has",
    received: found.name,
    remedy: "Give each bed a name of its own.",
    also: [[table.name, found.first, heading]],
  };
}
