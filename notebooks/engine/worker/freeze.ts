import { languageNames } from "./names.ts";

/**
 * Freezes what the language itself hands to everybody: `Object.prototype`, `Array.prototype`,
 * `Promise`, `JSON` and all the rest, so that a cell which tampers with them fails itself, and what
 * the room and the library do with them stays as it was. It comes after all of our own scripts were
 * evaluated and before the first cell.
 *
 * Freezing alone would forbid more than it should: a record could not be given a field called
 * `toString` or an error a `name` of its own, because the frozen prototype has one. So where such
 * fields are given in practice, the prototype's becomes a pair of getter and setter that does on the
 * record what assigning did before.
 *
 * @param more what is frozen with it
 */
export function freezeLanguage(scope: object, more: readonly unknown[] = []): void {
  const found = reachedFrom([...languageOf(scope), ...hidden(), ...more], scope);
  for (const prototype of assignable())
    for (const name of Reflect.ownKeys(prototype)) letAssign(prototype, name);
  for (const { prototype } of [Function, Array, Date]) letAssign(prototype, "toString");
  for (const one of found) Object.freeze(one);
}

/** What the scope's names of the language stand for. */
function languageOf(scope: object): readonly unknown[] {
  return [...languageNames].map((name) => Object.getOwnPropertyDescriptor(scope, name)?.value);
}

/** All objects that can be reached from these, but for the scope itself. */
function reachedFrom(start: readonly unknown[], scope: object): ReadonlySet<object> {
  const found = new Set<object>();
  const waiting = [...start];
  while (waiting.length > 0) {
    const at = waiting.pop();
    if (!isObject(at) || at === scope || found.has(at)) continue;
    found.add(at);
    waiting.push(Object.getPrototypeOf(at));
    for (const key of Reflect.ownKeys(at)) {
      const property = Object.getOwnPropertyDescriptor(at, key);
      waiting.push(property?.value, property?.get, property?.set);
    }
  }
  return found;
}

/** What the language has without a name for it. */
function hidden(): unknown[] {
  const iterators = [
    [][Symbol.iterator](),
    new Map().keys(),
    new Set().keys(),
    ""[Symbol.iterator](),
  ];
  return [
    ...iterators,
    "a".matchAll(/a/g),
    function* () {},
    async () => {},
    async function* () {},
    Object.getPrototypeOf(Int8Array),
  ];
}

/** Prototypes whose fields people and libraries override by assigning. */
function assignable(): readonly object[] {
  const errors = [Error, EvalError, RangeError, ReferenceError, SyntaxError, TypeError, URIError];
  return [Object.prototype, ...errors.map(({ prototype }) => prototype), AggregateError.prototype];
}

function letAssign(prototype: object, name: string | symbol): void {
  const property = Object.getOwnPropertyDescriptor(prototype, name);
  if (!property?.configurable || !("value" in property)) return;
  const { value, enumerable } = property;
  Object.defineProperty(prototype, name, {
    enumerable: enumerable ?? false,
    configurable: false,
    get: () => value,
    set(this: object, given: unknown) {
      if (this === prototype) throw new TypeError(`${String(name)} can't be changed for everybody`);
      Object.defineProperty(this, name, {
        value: given,
        writable: true,
        enumerable: true,
        configurable: true,
      });
    },
  });
}

function isObject(value: unknown): value is object {
  return (typeof value === "object" && value !== null) || typeof value === "function";
}
