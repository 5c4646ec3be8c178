/** A value with the inputs it came from. */
interface Last<Aside> {
  readonly inputs: readonly unknown[];
  readonly value: unknown;
  /** What else is to be known again with the value. */
  readonly aside: Aside;
}

/**
 * Remembers the last value a formula settled at. Where its inputs are the very same again, so is its
 * value, and the formula need not run: the graph asks for every dependent whenever something above
 * it was worked out anew, even where what came of it is what it was.
 */
export class SameInputs<Aside> {
  #last: Last<Aside> | undefined;

  /** The value for these inputs, with its aside; undefined where the formula must run. */
  recall(inputs: readonly unknown[]): Pick<Last<Aside>, "value" | "aside"> | undefined {
    const last = this.#last;
    if (last === undefined || last.inputs.length !== inputs.length) return undefined;
    return last.inputs.every((input, at) => Object.is(input, inputs[at])) ? last : undefined;
  }

  /** Takes in what a run gave: at once, or when its promise settles, unless another run came after. */
  remember(inputs: readonly unknown[], given: unknown, aside: Aside): void {
    this.#last = undefined;
    if (isIterating(given)) return;
    if (!isPromise(given)) {
      this.#last = { inputs, value: given, aside };
      return;
    }
    this.#run = given;
    given.then(
      (value) => {
        if (this.#run === given) this.#last = { inputs, value, aside };
      },
      () => undefined,
    );
  }

  #run: unknown;
}

function isPromise(value: unknown): value is Promise<unknown> {
  return value instanceof Promise;
}

/** Generators give value after value: they are never remembered. */
function isIterating(value: unknown): boolean {
  return typeof value === "object" && value !== null && "next" in value && "return" in value;
}
