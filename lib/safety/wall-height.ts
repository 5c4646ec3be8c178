import { type Caution, requireRecord } from "../check/index.ts";
import { Checks, foot, inch, type Length, printQuantity, times } from "../measure/index.ts";
import { type CautionOptions, calledFor } from "./called-for.ts";

/** Walls that hold back more soil than this with nothing to hold their top are to be designed. */
export const DESIGNED_WALL_HEIGHT: Length = times(inch, 24);
/** Retaining walls up to this, from the bottom of the footing, need no permit in the model code. */
export const PERMIT_WALL_HEIGHT: Length = times(foot, 4);

/** What is known of a wall. */
export interface WallOptions extends CautionOptions {
  /** Height of the soil a wall holds, from the lower ground. Default: not said. */
  readonly height?: Length;
}

/**
 * The caution for a wall over the usual height of a bed.
 *
 * @param options `height`: of the soil held, more than 0 to 20 ft; `because`: what called for it
 * @returns the caution, under the id `wall-height`; it names the permit from 4 ft up
 * @throws ProblemError where the height is no length from more than 0 to 20 ft
 * @rule More than 24 in of soil without support at the top is designed; from 4 ft a permit is usual.
 * @source irc-2009
 * @example
 * wallHeight({ because: "bed 14" }).because // => "bed 14"
 */
export function wallHeight(options: WallOptions = {}): Caution {
  requireRecord(options, ["options"]);
  const { height } = options;
  if (height !== undefined) checkHeight(height);
  const tall = height !== undefined && height.si >= PERMIT_WALL_HEIGHT.si - 1e-9;
  const says =
    height === undefined
      ? "A wall that holds back more than 24 in (61 cm) of soil"
      : `A wall of ${printQuantity(height, { system: "us" })} (${printQuantity(height, { system: "metric" })})`;
  return calledFor(
    {
      id: "wall-height",
      fact: `${says} is pushed hard by wet soil and can lean, slide or burst at the corners.`,
      advice: tall
        ? "Have it designed by an engineer, and ask for the permit: from 4 ft (122 cm), footing included, the model code wants one."
        : "Tie the long sides across or to deep stakes, let the water out, keep cars, sheds and slopes off the soil behind it, and have it looked at by someone who builds walls.",
      defersTo:
        "Your building office decides: some counties want a permit from 2 ft (61 cm). A licensed engineer's word goes above ours.",
      sources: ["irc-2009"],
    },
    options,
  );
}

/**
 * The cautions a wall of this height calls for: none up to 24 in of soil.
 *
 * @param height of the soil the wall holds, from the lower ground; more than 0 to 20 ft
 * @param options `because`: what called for it
 * @returns no caution, or the one of `wallHeight`
 * @throws ProblemError where the height is no length from more than 0 to 20 ft
 * @rule A caution above 24 in of soil held without support at the top.
 * @source irc-2009
 * @example
 * cautionsForWall(times(inch, 30), { because: "bed 14" }).length // => 1
 */
export function cautionsForWall(height: Length, options: CautionOptions = {}): readonly Caution[] {
  requireRecord(options, ["options"]);
  checkHeight(height);
  if (height.si <= DESIGNED_WALL_HEIGHT.si + 1e-9) return [];
  return [wallHeight({ ...options, height })];
}

function checkHeight(height: Length): void {
  new Checks()
    .quantity(height, "length", ["height"], { min: times(inch, 0.5), max: times(foot, 20) })
    .done();
}
