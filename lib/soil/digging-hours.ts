import { Given } from "../measure/given.ts";
import {
  type Duration,
  hour,
  quantity,
  type Range,
  timeDimension,
  type Volume,
} from "../measure/index.ts";
import { volumeLimits } from "./limits.ts";
import { sourcesOf } from "./sources.ts";

/** How long a kind of hand work takes: a row of the table of digging rates. */
export interface DiggingRate {
  readonly work: string;
  /** Hours of one person for each m3, above 0, to 100. */
  readonly hoursLow: number;
  readonly hoursHigh: number;
  readonly source: string;
}

/** So much of a kind of work. */
export interface DiggingWork {
  readonly work: DiggingRate;
  /** 0 to 1,000,000 m3. */
  readonly volume: Volume;
}

/**
 * The hours that digging, wheeling and putting back soil by hand take one person. Published rates
 * differ three- and fourfold, by soil, by tool and by what they count; the range says so.
 *
 * @param works none or more: `work`, a row with `hoursLow` and `hoursHigh` for each m3, above 0, to
 * 100; `volume`, 0 to 1,000,000 m3.
 * @throws ProblemError where a field is missing, of another kind or out of range; where the hours do
 * not rise (`contradiction`).
 * @rule hours = sum of volume x hours for each m3; likely = geometric mean of the two ends
 * @source menlo-labour-sheet, contractor-labour-sheet
 * @example
 * const row = (name) => published.diggingRates.find((each) => each.work === name);
 * diggingHours([{ work: row("dig, medium soil"), volume: cubicMetre }]).low // => 2.2 h
 */
export function diggingHours(works: readonly DiggingWork[]): Range<Duration> {
  const given = new Given();
  const rows = given.list(works, ["works"]).map((one, at) => {
    const path = ["works", at + 1];
    const fields = given.fields(one, path);
    const rate = given.fields(fields.work, [...path, "work"]);
    const hours = (key: string): number =>
      given.plain(rate[key], [...path, "work", key], { above: 0, max: 100 });
    const found = {
      low: hours("hoursLow"),
      high: hours("hoursHigh"),
      m3: given.si(fields.volume, "volume", [...path, "volume"], volumeLimits),
    };
    if (given.clean && found.low > found.high) {
      given.add({
        code: "contradiction",
        path: [...path, "work", "hoursLow"],
        allowed: "least hours not above the greatest",
        received: `${found.low} and ${found.high}`,
        remedy: "Swap the two.",
      });
    }
    return found;
  });
  given.done();
  const total = (of: (row: (typeof rows)[number]) => number): Duration =>
    quantity(rows.reduce((sum, row) => sum + row.m3 * of(row), 0) * hour.si, timeDimension);
  return {
    low: total((row) => row.low),
    likely: total((row) => Math.sqrt(row.low * row.high)),
    high: total((row) => row.high),
    basis: [...new Set(works.flatMap(({ work }) => sourcesOf(work.source)))],
  };
}
