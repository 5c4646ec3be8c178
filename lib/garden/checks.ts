import { type Path, type Problem, ProblemError, requireRecord } from "../check/index.ts";
import { type Checks, isCalendarDate, kilogramPerCubicMetre, times } from "../measure/index.ts";
import { listed, requireShape } from "../measure/shape.ts";
import { type SoilMaterial, settlingOrder, soilMass } from "../soil/index.ts";
import type { Bed } from "./bed.ts";
import { bed, bill, readingOf } from "./shapes.ts";
import { noVolume } from "./table-cells.ts";

/** Throws unless the value is what the reader of a table gives; the path ends with its name. */
export function requireReading(value: unknown, path: Path, table = String(path.at(-1))): void {
  requireShape(value, readingOf(table), path);
}

/** Throws unless the value is a list of beds, as `toBed` makes them. */
export function requireBeds(value: unknown): asserts value is readonly Bed[] {
  requireShape(value, listed(bed), ["beds"]);
}

/** A text that may be left out. */
export function optionalText(checks: Checks, value: unknown, path: Path): void {
  if (value !== undefined) checks.text(value, path);
}

/** A date that may be left out. */
export function optionalDate(checks: Checks, value: unknown, path: Path): void {
  if (value === undefined || isCalendarDate(value)) return;
  checks.add({
    code: value === null ? "missing" : "unreadable",
    path,
    allowed: "a date: { year }, { year, month } or { year, month, day }",
    received: value === null ? "" : typeof value === "object" ? "a record" : String(value),
    remedy: "Read it first: readDate(“2014”).",
  });
}

/** What wood weighs, where that is given. */
export function checkWoodDensity(checks: Checks, value: unknown, path: Path): void {
  if (value === undefined) return;
  const bounds = {
    min: times(50, kilogramPerCubicMetre),
    max: times(2000, kilogramPerCubicMetre),
  };
  checks.quantity(value, "density", path, bounds);
}

/** Throws unless the value is a row of the table of materials, with all its figures. */
export function requireMaterial(value: unknown, path: Path): void {
  requireRecord(value, path);
  try {
    settlingOrder(noVolume, value as SoilMaterial);
    soilMass(noVolume, value as SoilMaterial);
  } catch (error) {
    if (!(error instanceof ProblemError)) throw error;
    const here = (problem: Problem): Problem => ({
      ...problem,
      path: [...path, ...problem.path.slice(1)],
    });
    throw new ProblemError(error.problems.map(here));
  }
}

/** Throws unless the value is a bill, as `gardenBill` gives it. */
export function requireBill(value: unknown): void {
  requireShape(value, bill, ["bill"]);
}
