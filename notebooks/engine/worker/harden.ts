import { languageNames, workerNames } from "./names.ts";

/**
 * Takes away all that the worker's scope offers and is not on the list, along its whole chain of
 * prototypes, so that code compiled later finds none of it by any path: network, storage, further
 * workers, and whatever browsers may come to offer. This is the second wall; the first is the policy
 * of the frame. The navigator keeps its name alone, because the solver's loader asks for that.
 *
 * Gives the names that could not be taken away; none, in the engines tried.
 *
 * @param keep whether a name stays. Default: the language's own, and what our scripts need of a worker
 */
export function harden(
  scope: object,
  keep: (name: string) => boolean = (name) => languageNames.has(name) || workerNames.has(name),
): readonly string[] {
  const left = namesOf(scope).filter((name) => !keep(name) && !takeAway(scope, name));
  const { navigator } = scope as { navigator?: object };
  if (!navigator) return left;
  const more = namesOf(navigator).filter((name) => !takeAway(navigator, name));
  return [...left, ...more.map((name) => `navigator.${name}`)];
}

/** All names an object has or inherits, but for what every object inherits. */
function namesOf(start: object): readonly string[] {
  const names = new Set<string>();
  for (const holder of chain(start))
    for (const name of Object.getOwnPropertyNames(holder)) names.add(name);
  for (const name of Object.getOwnPropertyNames(Object.prototype)) names.delete(name);
  return [...names];
}

function takeAway(from: object, name: string): boolean {
  for (const holder of chain(from)) {
    try {
      delete (holder as Record<string, unknown>)[name];
    } catch {
      // What cannot be deleted is covered below.
    }
  }
  if (name in from) {
    try {
      Object.defineProperty(from, name, { value: undefined, configurable: false, writable: false });
    } catch {
      return false;
    }
  }
  return (from as Record<string, unknown>)[name] === undefined;
}

/** The object and what it inherits from, up to what every object inherits from. */
function* chain(start: object): Generator<object> {
  for (let at: object | null = start; at && at !== Object.prototype; at = Object.getPrototypeOf(at))
    yield at;
}
