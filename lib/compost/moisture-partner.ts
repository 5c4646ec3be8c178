import { Given } from "../measure/given.ts";
import { type Mass, massDimension, quantity } from "../measure/index.ts";
import { massLimits, shareLimits } from "./limits.ts";

/** The three moistures, shares of the moist mass. */
export interface MoisturePartnerOptions {
  /** Of what is there, 0 to 1. */
  readonly moisture: number;
  /** Of what is to be mixed in, 0 to 1. */
  readonly partner: number;
  /** Wanted of the mix, 0 to 1, between the two; 0.5 to 0.6 suits a heap. */
  readonly goal: number;
}

/**
 * How much of a drier (or wetter) material brings a heap to a wanted moisture.
 *
 * @param mass moist, of what is there, 0 to 1,000,000 kg.
 * @param options `moisture` of what is there, `partner` of what is mixed in, `goal` of the mix:
 * shares of the moist mass, 0 to 1.
 * @throws ProblemError where a field is missing, of another kind or out of range, or where the goal
 * does not lie between the two moistures (`contradiction`).
 * @rule partner mass = mass x (goal - moisture) / (partner moisture - goal)
 * @source cornell-compost-calc
 * @example
 * moisturePartner(times(10, pound), { moisture: 0.8, partner: 0.4, goal: 0.6 }) // => 10 lb
 */
export function moisturePartner(mass: Mass, options: MoisturePartnerOptions): Mass {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const kg = given.si(mass, "mass", ["mass"], massLimits);
  const moisture = given.plain(chosen.moisture, ["moisture"], shareLimits);
  const partner = given.plain(chosen.partner, ["partner"], shareLimits);
  const goal = given.plain(chosen.goal, ["goal"], shareLimits);
  if (given.clean && !((moisture - goal) * (goal - partner) > 0 || moisture === goal)) {
    given.add({
      code: "contradiction",
      path: ["goal"],
      allowed: "a moisture between that of the heap and that of what is mixed in",
      received: `${goal}, with ${moisture} and ${partner}`,
      remedy: "Mix in something drier to lower the moisture, something wetter to raise it.",
    });
  }
  given.done();
  return quantity(
    moisture === goal ? 0 : (kg * (goal - moisture)) / (partner - goal),
    massDimension,
  );
}
