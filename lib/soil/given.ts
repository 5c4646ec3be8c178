import { type Path, type Problem, ProblemError } from "../check/index.ts";
import { isQuantity } from "../measure/index.ts";

interface Limits {
  readonly min: number;
  readonly max: number;
  readonly words: string;
}

/** Collects all problems of a calculation's input; `done` throws them together. */
export class Given {
  readonly #problems: Problem[] = [];

  length(value: unknown, path: Path, limits: Limits): number {
    return this.#quantity(value, path, limits, "1,0,0,0,0");
  }
  area(value: unknown, path: Path, limits: Limits): number {
    return this.#quantity(value, path, limits, "2,0,0,0,0");
  }
  volume(value: unknown, path: Path, limits: Limits): number {
    return this.#quantity(value, path, limits, "3,0,0,0,0");
  }
  density(value: unknown, path: Path, limits: Limits): number {
    return this.#quantity(value, path, limits, "-3,1,0,0,0");
  }
  mass(value: unknown, path: Path, limits: Limits): number {
    return this.#quantity(value, path, limits, "0,1,0,0,0");
  }
  money(value: unknown, path: Path, limits: Limits): number {
    return this.#quantity(value, path, limits, "0,0,0,1,0");
  }
  number(value: unknown, path: Path, limits: Limits): number {
    if (value === undefined || value === null) return this.#no("missing", path, limits, "");
    if (typeof value !== "number") return this.#no("unreadable", path, limits, raw(value));
    return this.#within(value, path, limits, String(value));
  }
  count(value: unknown, path: Path, limits: Limits): number {
    const found = this.number(value, path, limits);
    if (Number.isInteger(found)) return found;
    return this.#no("unreadable", path, limits, raw(value));
  }
  choice<T extends string>(value: unknown, path: Path, choices: readonly T[]): T {
    const found = choices.find((choice) => choice === value);
    if (found !== undefined) return found;
    const words = choices.join(", ");
    this.#no("unknown", path, { min: 0, max: 0, words: `one of ${words}` }, raw(value));
    return choices[0] as T;
  }
  list(value: unknown, path: Path): readonly unknown[] {
    if (Array.isArray(value) && value.length > 0) return value;
    const code = value === undefined || Array.isArray(value) ? "missing" : "unreadable";
    this.#no(code, path, { min: 0, max: 0, words: "a list with at least one entry" }, raw(value));
    return [];
  }
  record(value: unknown, path: Path): Readonly<Record<string, unknown>> {
    if (typeof value === "object" && value !== null) return value as Record<string, unknown>;
    this.#no(
      value === undefined || value === null ? "missing" : "unreadable",
      path,
      { min: 0, max: 0, words: "a record with the fields named in the reference" },
      raw(value),
    );
    return {};
  }
  refuse(problem: Problem): void {
    this.#problems.push(problem);
  }
  clean(): boolean {
    return this.#problems.length === 0;
  }
  done(): void {
    if (this.#problems.length > 0) throw new ProblemError(this.#problems);
  }

  #quantity(value: unknown, path: Path, limits: Limits, dim: string): number {
    if (value === undefined || value === null) return this.#no("missing", path, limits, "");
    if (!isQuantity(value)) {
      return this.#no(
        typeof value === "number" ? "wrong-unit" : "unreadable",
        path,
        limits,
        raw(value),
      );
    }
    if (value.dim.join() !== dim) return this.#no("wrong-unit", path, limits, raw(value));
    return this.#within(value.si, path, limits, `${value.si} (SI)`);
  }
  #within(si: number, path: Path, limits: Limits, received: string): number {
    if (!Number.isFinite(si)) return this.#no("unreadable", path, limits, received);
    if (si < limits.min) return this.#no("too-small", path, limits, received);
    if (si > limits.max) return this.#no("too-large", path, limits, received);
    return si;
  }
  #no(code: Problem["code"], path: Path, limits: Limits, received: string): number {
    this.#problems.push({
      code,
      path,
      allowed: limits.words,
      received,
      remedy: `Give ${limits.words}.`,
    });
    return 0;
  }
}

const raw = (value: unknown): string => {
  if (value === undefined || value === null) return "";
  if (isQuantity(value)) return `${value.si} (SI)`;
  return typeof value === "object" ? "a record" : String(value);
};
