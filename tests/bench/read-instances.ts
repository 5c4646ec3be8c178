import { existsSync, readFileSync } from "node:fs";

/** One bin-packing instance: how many bins of one capacity hold all the sizes? */
export interface Instance {
  readonly name: string;
  readonly capacity: number;
  /** The least number of bins, as the file has it. */
  readonly bestKnown: number;
  readonly sizes: readonly number[];
}

// A size is taken as so many millimetres; boards may be up to 100 ft long.
const mostCapacity = 30_000;

function textOf(file: string): string {
  if (!existsSync(file)) throw new Error(`There is no file ${file}.`);
  return readFileSync(file, "utf8");
}

/** Lines that are not empty, one after the other; every complaint says where. */
class Lines {
  readonly #file: string;
  readonly #lines: readonly (readonly [number: number, text: string])[];
  #at = 0;

  constructor(file: string) {
    this.#file = file;
    this.#lines = textOf(file)
      .split(/\r?\n/)
      .map((text, at) => [at + 1, text.trim()] as const)
      .filter(([, text]) => text !== "");
  }

  get isAtEnd(): boolean {
    return this.#at >= this.#lines.length;
  }

  refuse(wanted: string, number: number | "end", text: string): Error {
    const [place, received] =
      number === "end" ? ["its end", "nothing follows"] : [`line ${number}`, `there is “${text}”`];
    return new Error(`${this.#file}, ${place}: ${wanted} is wanted; ${received}.`);
  }

  text(wanted: string): readonly [number: number, text: string] {
    const line = this.#lines[this.#at];
    if (line === undefined) throw this.refuse(wanted, "end", "");
    this.#at += 1;
    return line;
  }

  /** The next line's whole numbers above zero, so many, none above the most allowed. */
  numbers(wanted: string, count: number, most = Number.MAX_SAFE_INTEGER): readonly number[] {
    const [number, text] = this.text(wanted);
    const values = text.split(/\s+/).map(Number);
    const isGood = values.every((value) => Number.isInteger(value) && value > 0 && value <= most);
    if (values.length !== count || !isGood) throw this.refuse(wanted, number, text);
    return values;
  }
}

function readInstance(lines: Lines): Instance {
  const [, name] = lines.text("the name of a problem");
  const [capacity = 0, items = 0, bestKnown = 0] = lines.numbers(
    `a capacity (a whole number up to ${mostCapacity}), a number of items and the best known result`,
    3,
    mostCapacity,
  );
  const sizes = Array.from({ length: items }, () =>
    lines.numbers(`a size (a whole number from 1 to ${capacity})`, 1, capacity),
  ).flat();
  return { name, capacity, bestKnown, sizes };
}

/**
 * Reads bin-packing problems as operations-research libraries have them: the number of problems;
 * then of each its name; capacity, number of items, best known result; one size a line.
 * Throws an Error that says the line and what is wanted there.
 */
export function readInstances(file: string): readonly Instance[] {
  const lines = new Lines(file);
  const [count = 0] = lines.numbers("the number of problems", 1);
  const instances = Array.from({ length: count }, () => readInstance(lines));
  if (lines.isAtEnd) return instances;
  const [number, text] = lines.text("the end of the file");
  throw lines.refuse(`the end of the file after ${count} problems`, number, text);
}
