import { requireRecord } from "../check/index.ts";
import { Checks, foot, inch, type Length, times, zeroOf } from "../measure/index.ts";
import { checkSection } from "./checks.ts";
import { metresPerInch } from "./saw-length.ts";
import type { Section } from "./section.ts";

/**
 * Board feet, by which American lumber is counted and priced: of the nominal size, stock under 1 in
 * counting as 1 in thick. A section without a nominal size counts with what it measures.
 *
 * @param section as `readSection` gives it
 * @param length of one board, above 0 and up to 100 ft
 * @param options `count`: how many boards, default 1
 * @returns a number of board feet, not rounded
 * @throws ProblemError where the section, length or count is missing or out of range
 * @rule Thickness in inches x width in inches x length in feet / 12, for each board.
 * @source navy-builder
 * @example
 * boardFeet(readSection("2x12", { path: [] }).value, times(8, foot)) // => 16
 */
export function boardFeet(
  section: Section,
  length: Length,
  options: { readonly count?: number } = {},
): number {
  requireRecord(options, ["options"]);
  const { count = 1 } = options;
  const checks = new Checks()
    .quantity(length, "length", ["length"], { above: zeroOf(inch), max: times(100, foot) })
    .count(count, ["count"], { max: 1_000_000 });
  checkSection(checks, section, ["section"]);
  checks.done();
  const { thickness, width } = section.nominal ?? section;
  const thicknessIn = Math.max(1, thickness.si / metresPerInch);
  const feet = (thicknessIn * (width.si / metresPerInch) * (length.si / metresPerInch)) / 144;
  return count * Number(feet.toFixed(9));
}
