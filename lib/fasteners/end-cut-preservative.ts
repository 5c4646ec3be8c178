import { ProblemError, requireRecord, requireRecords } from "../check/index.ts";
import {
  type Area,
  Checks,
  foot,
  gallon,
  inch,
  isQuantity,
  type Length,
  over,
  type Quantity,
  squareFoot,
  sumOf,
  times,
  type Volume,
} from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";

/** Area a volume covers, in one coat. */
export type Coverage = Quantity<readonly [-1, 0, 0, 0, 0]>;

/** Sawn ends of one section. */
export interface SawnEnds {
  readonly section: { readonly thickness: Length; readonly width: Length };
  /** How many sawn ends; each saw cut makes two. */
  readonly ends: number;
}

/** What the label says, and how often it is brushed on. */
export interface EndCutOptions {
  /** Area a volume covers in one coat, as the label says. Default: 100 ft2 a gallon, from memory. */
  readonly coverage?: Coverage;
  /** Coats. Default: 2. */
  readonly coats?: number;
}

/** What seals the sawn ends. */
export interface EndCutPreservative {
  /** Of all sawn ends, once. */
  readonly area: Area;
  /** For all coats. */
  readonly volume: Volume;
  /** As it goes on the bill; the volume is what is needed, the yard's sizes round it up. */
  readonly line: { readonly item: "end-cut preservative"; readonly need: Volume };
}

/**
 * The preservative that seals the sawn ends of treated boards. Every cut, hole or hurt that may
 * pass the treated shell is to be coated; copper naphthenate with 2 % copper outdoors (1 % where 2 %
 * is not sold), the excess wiped off.
 *
 * @param sawn the sections with the number of sawn ends of each, 0 to 100,000
 * @param options `coverage`: 10 to 1,000 ft2 a gallon, default 100 (from memory; the label decides);
 *   `coats`: 1 to 10, default 2
 * @returns the area of the ends, the volume for all coats, and a line for the bill
 * @throws ProblemError where a size, count or the coverage is of the wrong kind or out of its range
 * @rule Volume = sum of thickness x width x ends, times coats, over the coverage.
 * @source awpa-m4-21, from memory
 * @example
 * endCutPreservative([{ section: { thickness: times(inch, 1.5), width: times(inch, 11.25) }, ends: 80 }]).area // => 9.38 sq ft
 */
export function endCutPreservative(
  sawn: readonly SawnEnds[],
  options: EndCutOptions = {},
): EndCutPreservative {
  requireRecords(sawn, ["sawn"]);
  requireRecord(options, ["options"]);
  const { coverage = over(times(squareFoot, 100), gallon), coats = 2 } = options;
  requireCoverage(coverage);
  const checks = new Checks().number(coats, ["coats"], { min: 1, max: 10 });
  sawn.forEach(({ section, ends }, at) => {
    const path = ["sawn", at + 1] as const;
    requireRecord(section, [...path, "section"]);
    checks
      .quantity(section.thickness, "length", [...path, "thickness"], {
        min: over(inch, 4),
        max: foot,
      })
      .quantity(section.width, "length", [...path, "width"], {
        min: over(inch, 4),
        max: times(foot, 2),
      })
      .count(ends, [...path, "ends"], { max: 100_000 });
  });
  checks.done();
  const areas = sawn.map(({ section, ends }) =>
    times(times(section.thickness, section.width), ends),
  );
  const area = sumOf(areas, times(squareFoot, 0));
  const volume = over(times(area, coats), coverage);
  return { area, volume, line: { item: "end-cut preservative", need: volume } };
}

/** Throws unless this is an area for a volume that a label could state. */
function requireCoverage(coverage: unknown): void {
  const problem = {
    path: ["coverage"],
    allowed: "an area for a volume, from 10 to 1,000 sq ft a gallon",
    remedy: "Divide an area by a volume: over(times(squareFoot, 100), gallon).",
  } as const;
  const isArea = isQuantity(coverage) && coverage.dim.join() === "-1,0,0,0,0";
  if (!isArea || !Number.isFinite(coverage.si)) {
    const received = receivedText(coverage ?? undefined);
    const isOther = typeof coverage === "number" ? Number.isFinite(coverage) : isQuantity(coverage);
    const code = received === "" ? "missing" : isOther && !isArea ? "wrong-unit" : "unreadable";
    throw new ProblemError([{ ...problem, code, received }]);
  }
  const squareFeet = (coverage.si * gallon.si) / squareFoot.si;
  if (squareFeet >= 10 - 1e-9 && squareFeet <= 1000 + 1e-9) return;
  const code = squareFeet < 10 ? "too-small" : "too-large";
  const received = `${Number(squareFeet.toPrecision(3))} sq ft a gallon`;
  throw new ProblemError([{ ...problem, code, received }]);
}
