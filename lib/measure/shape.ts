import { type Path, ProblemError, requireRecord, requireRecords } from "../check/index.ts";
import type { Bounds } from "./bounds.ts";
import { isCalendarDate } from "./calendar.ts";
import { Checks } from "./checks.ts";
import type { Kind, KindTypes } from "./kinds.ts";
import { isQuantity } from "./quantity.ts";

/** Adds what is wrong with a value to the checks. */
export type Shape = (checks: Checks, value: unknown, path: Path) => void;

// What another function made is described once, by shapes, and checked wherever it is handed in:
// it may have been through a file, a message, or the hands of somebody who changed a field.

export function sized<K extends Kind>(kind: K, bounds: Bounds<KindTypes[K]> = {}): Shape {
  return (checks, value, path) => checks.quantity(value, kind, path, bounds);
}

export function numbered(bounds: Bounds<number> = {}): Shape {
  return (checks, value, path) => checks.number(value, path, bounds);
}

export function counted(bounds: Bounds<number> = {}): Shape {
  return (checks, value, path) => checks.count(value, path, bounds);
}

export const named: Shape = (checks, value, path) => checks.text(value, path);

/** A text that may be empty. */
export const worded: Shape = (checks, value, path) => {
  if (typeof value !== "string") checks.text(value, path);
};

export function oneOf(...choices: readonly unknown[]): Shape {
  return (checks, value, path) => checks.choice(value, choices, path);
}

export const dated: Shape = (checks, value, path) => {
  if (isCalendarDate(value)) return;
  if (!isRecord(checks, value, path)) return;
  checks.add({
    code: "unreadable",
    path,
    allowed: "a date: { year }, { year, month } or { year, month, day }",
    received: "a record",
    remedy: "Read it first: readDate(“2014”).",
  });
};

/** What may be left out, or a value of the shape. */
export function perhaps(shape: Shape): Shape {
  return (checks, value, path) => {
    if (value !== undefined) shape(checks, value, path);
  };
}

/** null, which says that there is none, or a value of the shape. */
export function orNull(shape: Shape): Shape {
  return (checks, value, path) => {
    if (value !== null) shape(checks, value, path);
  };
}

/** A quantity of any dimension, or a number, finite; or a text. */
export const shown: Shape = (checks, value, path) => {
  if (typeof value === "string" || (isQuantity(value) && Number.isFinite(value.si))) return;
  checks.number(isQuantity(value) ? value.si : value, path);
};

// What is right needs no place: the first look goes without building one, which is most of the
// work for thousands of beds; only where something is wrong a second one says where.
const nowhere: Path = [];

function below(path: Path, step: string | number): Path {
  return path === nowhere ? nowhere : [...path, step];
}

function isRecord(checks: Checks, value: unknown, path: Path): value is Fields {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return true;
  checks.attempt(() => requireRecord(value, path));
  return false;
}

type Fields = Readonly<Record<string, unknown>>;

export function fields(shapes: Readonly<Record<string, Shape>>): Shape {
  const entries = Object.entries(shapes);
  return (checks, value, path) => {
    if (!isRecord(checks, value, path)) return;
    for (const [name, shape] of entries) shape(checks, value[name], below(path, name));
  };
}

/** A record whose other fields follow from one of them, as a price's from its kind. */
export function byKind(
  field: string,
  shapes: Readonly<Record<string, Readonly<Record<string, Shape>>>>,
): Shape {
  const known = new Map(Object.entries(shapes).map(([kind, shape]) => [kind, fields(shape)]));
  const kinds = oneOf(...known.keys());
  return (checks, value, path) => {
    if (!isRecord(checks, value, path)) return;
    const kind = value[field];
    kinds(checks, kind, below(path, field));
    if (typeof kind === "string") known.get(kind)?.(checks, value, path);
  };
}

/** A list whose entries, counted from 1, are of the shape. */
export function listed(shape: Shape): Shape {
  return (checks, value, path) => {
    if (!Array.isArray(value)) {
      checks.attempt(() => requireRecords(value, path));
      return;
    }
    for (const [at, entry] of value.entries()) shape(checks, entry, below(path, at + 1));
  };
}

/** The same shape; a record that was found sound is not looked at a second time. */
export function once(shape: Shape): Shape {
  const sound = new WeakSet<object>();
  return (checks, value, path) => {
    const isObject = typeof value === "object" && value !== null;
    if (isObject && sound.has(value)) return;
    const before = checks.problems.length;
    shape(checks, value, path);
    if (isObject && checks.problems.length === before) sound.add(value);
  };
}

/** Throws unless the value is of the shape. */
export function requireShape(value: unknown, shape: Shape, path: Path): void {
  const quick = new Checks();
  shape(quick, value, nowhere);
  if (quick.problems.length === 0) return;
  const checks = new Checks();
  shape(checks, value, path);
  throw new ProblemError(checks.problems);
}
