import * as lib from "../lib/index.ts";
import type {
  Figure,
  Host,
  LongWork,
  LongWorkControl,
  Measure,
  NameDoc,
  Units,
} from "../notebooks/engine/types/index.ts";
import * as fields from "../notebooks/fields/index.ts";
import { longWorkNames } from "./long-work.ts";
import { operators } from "./operators.ts";
import { loadPublished } from "./published.ts";

/** What a host is put together from, besides the library and the field makers. */
export interface HostParts {
  /** How a function that takes long is worked out, by its name. */
  longWork(name: string): LongWork;
  /** The published tables' files, by path; `made:data` in a bundle. */
  readonly data: Readonly<Record<string, string>>;
  /** Rules and sources of the library's functions; `made:rules` in a bundle. */
  readonly rules?: readonly NameDoc[];
  /** Names that are only loaded where a notebook asks for them: `Plot`, `aq`. */
  readonly extras?: Readonly<Record<string, unknown>>;
  /** Set as on a page, or as people type. Default `plain`. */
  readonly style?: "plain" | "typographic";
}

/** Ties the library, the field makers and the data into what the engine hands to cells. */
export function makeHost(parts: HostParts): Host {
  const { data, rules = [], extras = {}, style = "plain" } = parts;
  return {
    names: Object.freeze({ ...lib, ...fields, published: loadPublished(data), ...extras }),
    longWork: Object.fromEntries(
      longWorkNames.map((name) => [name, revived(parts.longWork(name))]),
    ),
    operators: operators as unknown as Host["operators"],
    print: printer(style),
    measure,
    toJson: (value, units) => toJson(value, units),
    dateOf,
    sentence: (problem) => lib.sentence(problem as lib.Problem),
    problemsOf: lib.problemsOf,
    readCsv: lib.readCsv,
    writeCsv: lib.writeCsv,
    docs: new Map(rules.map((doc) => [doc.name, doc])),
  };
}

/** Answers come from another thread as plain data, the better ones before the last too. */
function revived(work: LongWork): LongWork {
  return async (data, control) => {
    const { improved } = control;
    const reviving: LongWorkControl = improved
      ? { ...control, improved: (value) => improved(lib.reviveQuantities(value)) }
      : control;
    return lib.reviveQuantities(await work(data, reviving));
  };
}

/** Prints, and remembers what frozen quantities look like: most are shown again turn after turn. */
function printer(style: "plain" | "typographic"): Host["print"] {
  const printed = { us: new WeakMap<object, Figure>(), metric: new WeakMap<object, Figure>() };
  return (value, units) => {
    if (typeof value !== "object" || value === null) return undefined;
    const known = printed[units].get(value);
    if (known !== undefined) return known;
    const figure = print(value, { system: units, style });
    if (figure !== undefined && lib.isQuantity(value) && Object.isFrozen(value)) {
      printed[units].set(value, figure);
    }
    return figure;
  };
}

function print(value: object, options: lib.PrintOptions): Figure | undefined {
  if (lib.isQuantity(value)) return lib.printParts(value, options);
  if (lib.isRange(value)) return rangeFigure(value, options);
  if ("year" in value && lib.isCalendarDate(value)) return wordsFigure(lib.printDate(value));
  return isSection(value) ? wordsFigure(value.name) : undefined;
}

/** How large a value is; a range's bounds are told apart, a number that is none has no size. */
function measure(value: unknown): Measure | undefined {
  if (typeof value === "object" && value !== null && lib.isRange(value)) {
    const [low, likely, high] = [value.low, value.likely, value.high].map(sizeOf);
    if (low === undefined || likely === undefined || high === undefined) return undefined;
    return { of: likely.of, low: low.size, likely: likely.size, high: high.size };
  }
  const size = sizeOf(value);
  return size && { of: size.of, low: size.size, likely: size.size, high: size.size };
}

function sizeOf(value: unknown): { readonly of: string; readonly size: number } | undefined {
  if (typeof value === "number")
    return Number.isFinite(value) ? { of: "number", size: value } : undefined;
  if (!lib.isQuantity(value)) return undefined;
  const currency = value.currency === undefined ? "" : ` in ${value.currency}`;
  return { of: `${lib.dimensionName(value)}${currency}`, size: value.si };
}

function wordsFigure(text: string): Figure {
  return { text, number: text, unit: "" };
}

type AnyRange = lib.Range<lib.Quantity | number>;

function rangeFigure(range: AnyRange, options: lib.PrintOptions): Figure {
  const text = lib.printRange(range, options);
  const unit = lib.isQuantity(range.high) ? lib.printParts(range.high, options).unit : "";
  const number = unit !== "" && text.endsWith(unit) ? text.slice(0, -unit.length).trim() : text;
  const system = options.system === "metric" ? "us" : "metric";
  const second = lib.printRange(range, { ...options, system });
  const figure = { text, number, unit: number === text ? "" : unit };
  return second === text ? figure : { ...figure, second };
}

function isSection(value: unknown): value is lib.Section {
  if (typeof value !== "object" || value === null || !("nominal" in value)) return false;
  const { name, thickness, width, nominal } = value as Partial<lib.Section>;
  const sized = lib.isQuantity(thickness) && lib.isQuantity(width) && nominal !== undefined;
  return typeof name === "string" && sized;
}

function toJson(value: unknown, units: Units): unknown {
  if (lib.isQuantity(value)) return lib.quantityJson(value, units);
  if (lib.isRange(value)) {
    const { low, likely, high, basis } = value;
    const bound = (one: lib.Quantity | number) =>
      lib.isQuantity(one) ? lib.quantityJson(one, units) : one;
    const text = lib.printRange(value, { system: units });
    // A range stands where a quantity could: it has a quantity's fields too, of what is likely.
    const known = bound(likely);
    return {
      ...(typeof known === "object" ? known : {}),
      low: bound(low),
      likely: bound(likely),
      high: bound(high),
      basis,
      text,
    };
  }
  if (lib.isCalendarDate(value)) return lib.isoDate(value);
  return isSection(value) ? value.name : undefined;
}

function dateOf(iso: string): lib.CalendarDate {
  const reading = lib.readDate(iso, { path: ["today"] });
  if (!reading.ok) throw new lib.ProblemError([reading.problem]);
  return reading.value;
}
