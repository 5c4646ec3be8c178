import type { Mass } from "../measure/index.ts";
import { Given } from "../soil/given.ts";
import { massOf } from "../soil/si.ts";

/** The three moistures, shares of the moist mass. */
export interface MoisturePartnerOptions {
  /** Of what is there, 0 to 1. */
  readonly moisture: number;
  /** Of what is to be mixed in, 0 to 1. */
  readonly partner: number;
  /** Wanted of the mix, 0 to 1, between the two; 0.5 to 0.6 suits a heap. */
  readonly goal: number;
}

const massLimits = { min: 0, max: 1e6, words: "a mass from 0 to 1,000,000 kg" };
const share = { min: 0, max: 1, words: "a share from 0 to 1" };

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
 * moisturePartner(times(10, kilogram), { moisture: 0.8, partner: 0.4, goal: 0.6 }).si // => 10
 */
export function moisturePartner(mass: Mass, options: MoisturePartnerOptions): Mass {
  const given = new Given();
  const chosen = given.record(options, ["options"]);
  const kg = given.mass(mass, ["mass"], massLimits);
  const moisture = given.number(chosen.moisture, ["moisture"], share);
  const partner = given.number(chosen.partner, ["partner"], share);
  const goal = given.number(chosen.goal, ["goal"], share);
  if (given.clean() && !((moisture - goal) * (goal - partner) > 0 || moisture === goal)) {
    given.refuse({
      code: "contradiction",
      path: ["goal"],
      allowed: "a moisture between that of the heap and that of what is mixed in",
      received: `${goal}, with ${moisture} and ${partner}`,
      remedy: "Mix in something drier to lower the moisture, something wetter to raise it.",
    });
  }
  given.done();
  return massOf(moisture === goal ? 0 : (kg * (goal - moisture)) / (partner - goal));
}
