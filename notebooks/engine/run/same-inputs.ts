/** A value with the inputs it came from. */
interface Last {
  readonly inputs: readonly unknown[];
  readonly value: unknown;
}

/**
 * Remembers the last value a formula settled at. Where its inputs are the very same again, so is its
 * value, and the formula need not run: the graph asks for every dependent whenever something above
 * it was worked out anew, even where what came of it is what it was.
 */
export class SameInputs {
  #last: Last | undefined;

  /** The value for these inputs, in a box; undefined where the formula must run. */
  recall(inputs: readonly unknown[]): { readonly value: unknown } | undefined {
    const last = this.#last;
    if (last === undefined || last.inputs.length !== inputs.length) return undefined;
    return last.inputs.every((input, at) => Object.is(input, inputs[at])) ? last : undefined;
  }

  /** Takes in what a run gave: at once, or when its promise settles, unless another run came after. */
  remember(inputs: readonly unknown[], given: unknown): void {
    this.#last = undefined;
    if (isIterating(given)) return;
    if (!isPromise(given)) {
      this.#last = { inputs, value: given };
      return;
    }
    this.#run = given;
    given.then(
      (value) => {
        if (this.#run === given) this.#last = { inputs, value };
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
