import { requireRecord } from "../check/index.ts";
import { Checks, type Density, poundPerCubicFoot, times } from "../measure/index.ts";

/** What a preservative's wood must hold in each use category; `null` where it is not used there. */
export interface PreservativeRow {
  readonly preservative: string;
  readonly aboveGround: Density | null;
  readonly groundContact: Density | null;
  readonly heavyDuty: Density | null;
}

const retentions = ["aboveGround", "groundContact", "heavyDuty"] as const;

/** What is known of the treated wood and its use. */
export interface GroundContactOptions {
  /** The preservative's row, for its retention. Default: left out. */
  readonly preservative?: PreservativeRow;
  /** Whether the wood holds up a permanent structure or is in a severe climate. Default: no. */
  readonly heavy?: boolean;
}

/** What boards of a bed must be stamped. */
export interface GroundContactStamp {
  /** The use category to look for on the end tag. */
  readonly category: "UC4A" | "UC4B";
  /** What the wood must hold; `null` where no preservative is given or it is not used so. */
  readonly retention: Density | null;
  /** What to look for, in a sentence. */
  readonly look: string;
}

/**
 * The stamp that boards of a bed must carry: ground contact, never above-ground wood, since soil
 * lies against them and they are wetted often.
 *
 * @param options `preservative`: a row of the table of preservatives; `heavy`: yes or no
 * @returns the use category, the retention for the preservative, and what to look for
 * @throws ProblemError where `heavy` is not yes or no, or the row holds what is no density up to 10 lb/ft3
 * @rule UC4A, ground contact, for beds; UC4B where a permanent structure stands on it.
 * @source awpa-u1, osu-treated-beds
 * @example
 * groundContactStamp().category // => "UC4A"
 */
export function groundContactStamp(options: GroundContactOptions = {}): GroundContactStamp {
  requireRecord(options, ["options"]);
  const { preservative, heavy = false } = options;
  const checks = new Checks().choice(heavy, [true, false], ["heavy"]);
  if (preservative !== undefined) requireRecord(preservative, ["preservative"]);
  const bounds = { above: times(poundPerCubicFoot, 0), max: times(poundPerCubicFoot, 10) };
  for (const column of retentions) {
    const held = preservative?.[column] ?? null;
    if (held !== null) checks.quantity(held, "density", ["preservative", column], bounds);
  }
  checks.done();
  const retention = preservative?.[heavy ? "heavyDuty" : "groundContact"] ?? null;
  const category = heavy ? "UC4B" : "UC4A";
  return {
    category,
    retention,
    look: `Take boards whose end tag says GROUND CONTACT or ${category}; boards marked ABOVE GROUND or UC3B are not for beds.`,
  };
}
