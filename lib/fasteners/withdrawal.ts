import { requireRecord } from "../check/index.ts";
import {
  Checks,
  inch,
  type Length,
  minus,
  over,
  pound,
  type Quantity,
  quantity,
  times,
} from "../measure/index.ts";

/** A force; in SI the newton. */
export type Force = Quantity<readonly [1, 1, -2, 0, 0]>;
/** A force for each length of fastener in the wood. */
export type ForcePerLength = Quantity<readonly [0, 1, -2, 0, 0]>;

/** One newton. @source nist-sp-811 */
export const newton: Force = quantity(1, [1, 1, -2, 0, 0]);
/** One pound-force: a pound under standard gravity, 9.80665 m/s2 exactly. @source nist-sp-811 */
export const poundForce: Force = quantity(pound.si * 9.80665, [1, 1, -2, 0, 0]);

/** A fastener, the wood, and how its fibres lie. */
export interface WithdrawalOptions {
  readonly fastener: "wood screw" | "nail" | "lag screw";
  /** Specific gravity of the wood, oven-dry weight and volume, 0.2 to 1.2. */
  readonly specificGravity: number;
  /** Of the shank, 1/32 to 1-1/4 in. */
  readonly diameter: Length;
  /** How the fibres lie to the fastener. Default: `side`. */
  readonly grain?: "side" | "end";
}

/**
 * What a fastener holds against being pulled straight out, for each length of it in the wood:
 * thread for screws, penetration for smooth nails. Allowable stress design, normal load, dry wood;
 * wetting and duration factors are for the designer.
 *
 * @param options `fastener`, `specificGravity`, `diameter`, `grain`
 * @returns the reference withdrawal value, a force per length; 0 for screws and nails in end grain
 * @throws ProblemError where an option is of the wrong kind or out of its range
 * @rule In lb/in with D in inches: wood screw 2850 G2 D, nail 1380 G^2.5 D, lag screw 1800 G^1.5 D^0.75 (x 0.75 in end grain).
 * @source nds-2018
 * @example
 * Math.round(over(withdrawal({ fastener: "lag screw", specificGravity: 0.5, diameter: times(inch, 0.25) }), over(poundForce, inch))) // => 225
 */
export function withdrawal(options: WithdrawalOptions): ForcePerLength {
  requireRecord(options, ["options"]);
  const { fastener, specificGravity: g, diameter, grain = "side" } = options;
  new Checks()
    .choice(fastener, ["wood screw", "nail", "lag screw"], ["fastener"])
    .number(g, ["specificGravity"], { min: 0.2, max: 1.2 })
    .quantity(diameter, "length", ["diameter"], { min: over(inch, 32), max: times(inch, 1.25) })
    .choice(grain, ["side", "end"], ["grain"])
    .done();
  const diameterIn = over(diameter, inch);
  const poundsPerInch = {
    "wood screw": grain === "end" ? 0 : 2850 * g ** 2 * diameterIn,
    nail: grain === "end" ? 0 : 1380 * g ** 2.5 * diameterIn,
    "lag screw": 1800 * g ** 1.5 * diameterIn ** 0.75 * (grain === "end" ? 0.75 : 1),
  }[fastener];
  return times(over(poundForce, inch), poundsPerInch);
}

/** A fastener through one piece into another. */
export interface PenetrationJoint {
  readonly fastener: "wood screw" | "nail" | "lag screw";
  readonly length: Length;
  readonly diameter: Length;
  /** Thickness of what the fastener goes through first. */
  readonly through: Length;
}

/**
 * How deep a fastener goes into the piece behind, and whether that is the least asked for.
 *
 * @param joint `fastener`; `length`, 1/4 to 24 in; `diameter`, 1/32 to 1-1/4 in; `through`, 0 to 12 in
 * @returns the depth (tip included), the least, and whether it is enough
 * @throws ProblemError where a value is of the wrong kind or out of its range
 * @rule Depth = length - thickness gone through; least 6 diameters, 4 for lag screws.
 * @source nds-2018
 * @example
 * penetration({ fastener: "nail", length: times(inch, 2.5), diameter: times(inch, 0.131), through: times(inch, 0.105) }).enough // => true
 */
export function penetration(joint: PenetrationJoint): {
  readonly depth: Length;
  readonly least: Length;
  readonly enough: boolean;
} {
  requireRecord(joint, ["joint"]);
  const { fastener, length, diameter, through } = joint;
  new Checks()
    .choice(fastener, ["wood screw", "nail", "lag screw"], ["fastener"])
    .quantity(length, "length", ["length"], { min: over(inch, 4), max: times(inch, 24) })
    .quantity(diameter, "length", ["diameter"], { min: over(inch, 32), max: times(inch, 1.25) })
    .quantity(through, "length", ["through"], { min: times(inch, 0), max: times(inch, 12) })
    .done();
  const least = times(diameter, fastener === "lag screw" ? 4 : 6);
  const past = minus(length, through);
  const depth = past.si > 0 ? past : times(inch, 0);
  return { depth, least, enough: depth.si >= least.si - 1e-9 };
}
