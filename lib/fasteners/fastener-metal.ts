import { requireRecord } from "../check/index.ts";
import { Checks } from "../measure/index.ts";

/** What a screw or plate touches. */
export interface FastenerMetalOptions {
  /** Whether the wood holds a copper preservative. */
  readonly treated: boolean;
  /** Where the fastener is. Default: `outdoors`. */
  readonly place?: "outdoors" | "in soil" | "near salt";
}

/** The metal to buy, in words. */
export interface FastenerMetal {
  /** For nails, screws and bolts. */
  readonly screws: string;
  /** For corner plates and other connectors. */
  readonly plates: string;
  /** What not to use. */
  readonly never: string;
}

/**
 * The metal that lasts with the wood: copper in treated wood eats plain and plated steel.
 *
 * @param options `treated`: yes or no; `place`: `outdoors`, `in soil` or `near salt`
 * @returns in words, what screws and plates are to be made of and what never
 * @throws ProblemError where `treated` is not yes or no or the place is not one of these
 * @rule Copper-treated: hot-dip galvanised to A153 (plates G185) or stainless; in soil or near salt stainless.
 * @source sfpa-fasteners, wpc-fasteners
 * @example
 * fastenerMetal({ treated: true, place: "in soil" }).screws // => "stainless steel 304 or 316"
 */
export function fastenerMetal(options: FastenerMetalOptions): FastenerMetal {
  requireRecord(options, ["options"]);
  const { treated, place = "outdoors" } = options;
  new Checks()
    .choice(treated, [true, false], ["treated"])
    .choice(place, ["outdoors", "in soil", "near salt"], ["place"])
    .done();
  const never = treated
    ? "no plain, electroplated or aluminium fasteners; screws and plates of the same metal"
    : "screws and plates of the same metal";
  if (place !== "outdoors") {
    return { screws: "stainless steel 304 or 316", plates: "stainless steel", never };
  }
  return {
    screws: "hot-dip galvanised (ASTM A153) or stainless steel 304 or 316",
    plates: treated
      ? "galvanised to G185 (ASTM A653), galvanised after making (A123), or stainless"
      : "galvanised or stainless",
    never,
  };
}
