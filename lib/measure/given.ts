import type { Path } from "../check/index.ts";
import type { Bounds } from "./bounds.ts";
import { Checks } from "./checks.ts";
import type { Kind, KindTypes } from "./kinds.ts";
import { isQuantity } from "./quantity.ts";
import { receivedText } from "./received.ts";

/**
 * `Checks` for calculations that go on in plain SI numbers: each check also gives the value, or 0
 * where it was refused, so that a calculation reads its input in one place and calls `done` before
 * it uses any of it.
 */
export class Given extends Checks {
  /** The value of a quantity in SI. */
  si<K extends Kind>(value: unknown, kind: K, path: Path, bounds: Bounds<KindTypes[K]> = {}) {
    this.quantity(value, kind, path, bounds);
    return isQuantity(value) ? value.si : 0;
  }

  /** A plain number. */
  plain(value: unknown, path: Path, bounds: Bounds<number> = {}): number {
    this.number(value, path, bounds);
    return typeof value === "number" ? value : 0;
  }

  /** A whole number. */
  whole(value: unknown, path: Path, bounds: Bounds<number> = {}): number {
    this.count(value, path, bounds);
    return typeof value === "number" ? value : 0;
  }

  /** A text with something in it. */
  name(value: unknown, path: Path): string {
    this.text(value, path);
    return typeof value === "string" ? value : "";
  }

  /** One of a few values; the first of them where it was refused. */
  oneOf<const T>(value: unknown, choices: readonly [T, ...T[]], path: Path): T {
    this.choice(value, choices, path);
    return choices.find((choice) => choice === value) ?? choices[0];
  }

  /** The fields of a record, none where it is no record; so that no field's check can crash. */
  fields(value: unknown, path: Path): Readonly<Record<string, unknown>> {
    const isRecord = typeof value === "object" && value !== null && !Array.isArray(value);
    if (isRecord && !isQuantity(value)) return value as Record<string, unknown>;
    this.add({
      code: value === undefined || value === null ? "missing" : "unreadable",
      path,
      allowed: "a record of named fields",
      received: receivedText(value ?? undefined),
      remedy: "Give the fields by name, as the reference lists them.",
    });
    return {};
  }

  /** The entries of a list of at least so many. */
  list(value: unknown, path: Path, least = 0): readonly unknown[] {
    if (Array.isArray(value) && value.length >= least) return value;
    const isNothing = value === undefined || value === null || Array.isArray(value);
    this.add({
      code: isNothing ? "missing" : "unreadable",
      path,
      allowed: least === 0 ? "a list" : `a list of at least ${least}`,
      received: receivedText(value ?? undefined),
      remedy: "Give a list, as [a, b].",
    });
    return [];
  }

  /** Whether nothing has been refused so far. */
  get clean(): boolean {
    return this.problems.length === 0;
  }
}
