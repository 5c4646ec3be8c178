import { type Problem, ProblemError, requireRecord } from "../check/index.ts";

/**
 * The defaults with what was chosen over them; a field given as undefined counts as not given. A
 * name that is none of the defaults' is a slip and refused.
 */
export function withDefaults<T extends object>(defaults: T, chosen: Partial<T>): T {
  requireRecord(chosen, ["chosen"]);
  const given = Object.entries(chosen).filter(([, value]) => value !== undefined);
  const problems = given
    .filter(([name]) => !Object.hasOwn(defaults, name))
    .map(([name]) => notAChoice(name, Object.keys(defaults)));
  if (problems.length > 0) throw new ProblemError(problems);
  return { ...defaults, ...(Object.fromEntries(given) as Partial<T>) };
}

function notAChoice(name: string, names: readonly string[]): Problem {
  return {
    code: "unknown",
    path: [name],
    allowed: names.join(", "),
    received: name,
    remedy: "Correct the name of the choice, or leave it out.",
  };
}
