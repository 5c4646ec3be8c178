import {
  ProblemError,
  type Reading,
  readCount,
  readNumber,
  readPercent,
  requireNumber,
} from "../../lib/index.ts";
import type { Entry, EntryKind, Slide } from "../engine/types/index.ts";
import {
  type BoundedOptions,
  completed,
  limitsInWords,
  madeEntry,
  type NoneOption,
  type OrNone,
  requireOptions,
} from "./options.ts";

/** What an entry of a number may say of itself; limits of a percentage are shares or "12 %". */
export interface NumberEntryOptions extends BoundedOptions<number>, NoneOption {
  /**
   * Step of a slide beside the field, above 0, of a percentage in per cent; `min` and `max`, which are
   * its ends, must be given with it. Default: no slide.
   */
  readonly slide?: number;
}

type Reader = (
  text: string,
  options: { path: []; unit?: "%"; min?: number; max?: number },
) => Reading<number>;

/**
 * An entry for a number without unit: `numberEntry("0.75", { min: 0, max: 1 })`.
 *
 * @throws ProblemError where the default or a limit is no number, or an option is misspelt
 *
 * @example
 * numberEntry("0.75", { min: 0, max: 1 }).limits // => "0 to 1"
 */
export function numberEntry<const O extends NumberEntryOptions = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<number, O>> {
  return plainEntry({ entry: "number", initial, reader: readNumber }, options);
}

/**
 * An entry for a whole number, from 0 unless `min` says otherwise: `countEntry("2", { max: 12 })`.
 *
 * @throws ProblemError where the default or a limit is no whole number, or an option is misspelt
 *
 * @example
 * countEntry("2", { max: 12 }).read("3").value // => 3
 */
export function countEntry<const O extends NumberEntryOptions = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<number, O>> {
  return plainEntry({ entry: "number", initial, reader: readCount, least: 0 }, options);
}

/**
 * An entry for a share, written as a percentage, from 0 % unless `min` says otherwise:
 * `percentEntry("8 %", { max: "100 %" })` has the value 0.08. A bare number is a percentage.
 *
 * @throws ProblemError where the default or a limit is no percentage, or an option is misspelt
 *
 * @example
 * percentEntry("8 %", { max: "100 %" }).read("12 %").value // => 0.12
 */
export function percentEntry<const O extends NumberEntryOptions = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<number, O>> {
  const reader: Reader = (text, bounds) => readPercent(text, { min: 0, ...bounds, unit: "%" });
  return plainEntry({ entry: "percent", initial, reader, unit: "%", least: 0 }, options);
}

interface ToMake {
  readonly entry: EntryKind;
  readonly initial: string;
  readonly reader: Reader;
  readonly unit?: string;
  /** The least there is where no other is asked for. */
  readonly least?: number;
}

function plainEntry<O extends NumberEntryOptions>(
  { entry, initial, reader, unit, least }: ToMake,
  options: O,
): Entry<OrNone<number, O>> {
  requireOptions(options, ["min", "max", "orNone", "slide"]);
  const min = boundOf(options.min, reader, "min");
  const max = boundOf(options.max, reader, "max");
  const bounds = {
    path: [] as [],
    ...(min === undefined ? {} : { min }),
    ...(max === undefined ? {} : { max }),
  };
  const slide = slideOf(options.slide, { min: min ?? least, max, scale: unit === "%" ? 100 : 1 });
  const limits = limitsInWords(textOf(options.min, unit), textOf(options.max, unit));
  return madeEntry<number, O>(
    {
      entry,
      initial,
      read(text) {
        const reading = reader(text, bounds);
        const complete = completed(text, unit);
        return reading.ok && complete !== undefined ? { ...reading, complete } : reading;
      },
      ...(unit === undefined ? {} : { unit }),
      ...(limits === undefined ? {} : { limits }),
      ...(slide === undefined ? {} : { slide }),
    },
    options,
  );
}

interface SlideEnds {
  readonly min: number | undefined;
  readonly max: number | undefined;
  /** What a figure is typed in: 100 for per cent. */
  readonly scale: number;
}

/** A slide with its ends as they are typed. */
function slideOf(step: number | undefined, { min, max, scale }: SlideEnds): Slide | undefined {
  if (step === undefined) return undefined;
  const plain = requireNumber(step, ["options", "slide"], { above: 0, max: 1e9 });
  if (min === undefined || max === undefined || min >= max) {
    throw new ProblemError([
      {
        code: "contradiction",
        path: ["options", "slide"],
        allowed: "a slide only with `min` and `max`, its two ends",
        received: `min ${min ?? "none"}, max ${max ?? "none"}`,
        remedy: "Give both limits, or leave the slide out.",
      },
    ]);
  }
  const typed = (value: number): number => Number((scale * value).toPrecision(12));
  return { from: typed(min), to: typed(max), step: plain };
}

function boundOf(
  bound: string | number | undefined,
  reader: Reader,
  name: string,
): number | undefined {
  if (bound === undefined) return undefined;
  if (typeof bound !== "string") return requireNumber(bound, ["options", name]);
  const reading = reader(bound, { path: [] });
  if (!reading.ok) throw new ProblemError([{ ...reading.problem, path: ["options", name] }]);
  return reading.value;
}

function textOf(bound: string | number | undefined, unit: string | undefined): string | undefined {
  if (typeof bound !== "number") return bound;
  return unit === "%" ? `${Number((bound * 100).toPrecision(12))} %` : String(bound);
}
