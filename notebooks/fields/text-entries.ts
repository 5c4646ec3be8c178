import {
  type CalendarDate,
  isoDate,
  readDate,
  readSection,
  type Seasoning,
  type Section,
} from "../../lib/index.ts";
import type { Entry } from "../engine/types/index.ts";
import {
  type EntryOptions,
  madeEntry,
  type NoneOption,
  type OrNone,
  requireOptions,
} from "./options.ts";

/**
 * An entry for a date, as a year, month or day: `dateEntry("2026-04-25")`, `dateEntry(today)`.
 *
 * @throws ProblemError where the default is no date, or an option is misspelt
 *
 * @example
 * printDate(dateEntry("2026-04-25").read("2026-04").value) // => "April 2026"
 */
export function dateEntry<const O extends EntryOptions & NoneOption = object>(
  initial: string | CalendarDate,
  options: O = {} as O,
): Entry<OrNone<CalendarDate, O>> {
  requireOptions(options, ["orNone"]);
  const text = typeof initial === "string" ? initial : isoDate(initial);
  return madeEntry<CalendarDate, O>(
    { entry: "date", initial: text, read: (typed) => readDate(typed, { path: [] }) },
    options,
  );
}

/** What an entry of a section may say of itself. */
export interface SectionEntryOptions extends EntryOptions, NoneOption {
  /** Which dressed size a nominal section has. Default `dry`. */
  readonly seasoning?: Seasoning;
}

/**
 * An entry for a board's section: `sectionEntry("2x12")`, `sectionEntry("none", { orNone: true })`.
 *
 * @throws ProblemError where the default is no section, or an option is misspelt
 *
 * @example
 * sectionEntry("2x12").read("2x10").value.name // => "2x10"
 */
export function sectionEntry<const O extends SectionEntryOptions = object>(
  initial: string,
  options: O = {} as O,
): Entry<OrNone<Section, O>> {
  requireOptions(options, ["orNone", "seasoning"]);
  const { seasoning = "dry" } = options;
  return madeEntry<Section, O>(
    { entry: "text", initial, read: (text) => readSection(text, { path: [], seasoning }) },
    options,
  );
}

/** The longest text an entry takes. */
const longestText = 500;

/**
 * An entry for words, at most 500 characters: `textEntry("Our garden")`. Blank is allowed.
 *
 * @throws ProblemError where the default is too long, or an option is misspelt
 *
 * @example
 * textEntry("Our garden").initial // => "Our garden"
 */
export function textEntry(initial: string, options: EntryOptions = {}): Entry<string> {
  requireOptions(options, []);
  return madeEntry<string, EntryOptions>({ entry: "text", initial, read: readWords }, options);
}

const readWords: Entry<string>["read"] = (text) => {
  if (text.length <= longestText) return { ok: true, value: text.trim() };
  const problem = {
    code: "too-large",
    path: [],
    allowed: `at most ${longestText} characters`,
    received: `${text.slice(0, 40)}… (${text.length} characters)`,
    remedy: "Shorten it.",
  };
  return { ok: false, problem };
};
