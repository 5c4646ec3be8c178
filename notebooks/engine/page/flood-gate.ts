import type { Amount } from "./checks.ts";

/** What a room may send in one second. A key held down in a notebook of 500 cells stays far below. */
export interface Rates extends Amount {
  readonly messages: number;
  /** Messages of no known kind or shape: our own room sends none. */
  readonly malformed: number;
}

const usual: Rates = {
  messages: 20_000,
  malformed: 20,
  parts: 6_000_000,
  characters: 150_000_000,
};

/** Counts what comes, so that a room that floods the page is ended. */
export class FloodGate {
  readonly #rates: Rates;
  #since = 0;
  #came = { messages: 0, malformed: 0, parts: 0, characters: 0 };

  constructor(rates: Partial<Rates> = {}) {
    this.#rates = { ...usual, ...rates };
  }

  /** Whether one more message may come at this time (milliseconds). */
  admits(now: number): boolean {
    if (now - this.#since >= 1_000) {
      this.#since = now;
      this.#came = { messages: 0, malformed: 0, parts: 0, characters: 0 };
    }
    this.#came.messages += 1;
    return this.#within();
  }

  /** Whether what the message held was not too much together with what came before it. */
  took({ parts, characters }: Amount, wellFormed: boolean): boolean {
    this.#came.parts += parts;
    this.#came.characters += characters;
    if (!wellFormed) this.#came.malformed += 1;
    return this.#within();
  }

  #within(): boolean {
    const came = this.#came;
    const rates = this.#rates;
    return (
      came.messages <= rates.messages &&
      came.malformed <= rates.malformed &&
      came.parts <= rates.parts &&
      came.characters <= rates.characters
    );
  }
}
