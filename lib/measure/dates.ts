import { type Path, ProblemError, type Reading, requireRecord } from "../check/index.ts";
import {
  type CalendarDate,
  dateBefore,
  dateOfDay,
  daysInMonth,
  firstDay,
  isCalendarDate,
  requireDate,
} from "./calendar.ts";
import { requireChoice, requireCount } from "./guards.ts";
import { refused, understood } from "./read-options.ts";
import { receivedText } from "./received.ts";

const monthNames = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** How a date is read. */
export interface DateOptions {
  readonly path?: Path;
  /** The earliest and the latest date allowed. */
  readonly min?: CalendarDate;
  readonly max?: CalendarDate;
  /** The least that must be given; a year alone will do unless said. */
  readonly precision?: "year" | "month" | "day";
}

const writing = {
  year: "a year (2026), a month (2026-04) or a day (2026-04-25)",
  month: "a month (2026-04) or a day (2026-04-25)",
  day: "a day (2026-04-25)",
} as const;

function dateAllowed({ min, max, precision = "year" }: DateOptions): string {
  const from = min === undefined ? "" : ` from ${printDate(min)}`;
  const to = max === undefined ? "" : `${min === undefined ? " up" : ""} to ${printDate(max)}`;
  return writing[precision] + from + to;
}

function requireDateOptions(options: DateOptions): void {
  requireRecord(options, ["options"]);
  const { min, max, precision = "year" } = options;
  if (min !== undefined) requireDate(min, ["min"]);
  if (max !== undefined) requireDate(max, ["max"]);
  requireChoice(precision, ["year", "month", "day"], ["precision"]);
}

function whyNoDate(text: string): string {
  if (/^\d{1,2}[/.]\d{1,2}[/.]\d{2,4}$/.test(text)) {
    return "Day and month can be taken for each other: write year-month-day, as 2026-04-25.";
  }
  return "Write year-month-day, as 2026-04-25, 2026-04 or 2026.";
}

/**
 * Reads a date: "2026", "2026-04" or "2026-04-25" (years 0001 to 9999). Other orders are refused,
 * for day and month could be taken for each other; so are days that do not exist.
 *
 * @throws ProblemError for bounds that are no dates, a precision that is none
 * @rule year, month and day in that order, as the standard writes them
 * @source iso-8601
 * @example
 * readDate("2026-04-25") // => {"ok":true,"value":{"year":2026,"month":4,"day":25}}
 */
export function readDate(text: string, options: DateOptions = {}): Reading<CalendarDate> {
  requireDateOptions(options);
  const allowed = dateAllowed(options);
  if (typeof text !== "string" || text.trim() === "") {
    const isBlank = text === undefined || text === null || typeof text === "string";
    return refused(isBlank ? "missing" : "unreadable", text, options, allowed, whyNoDate(""));
  }
  const found = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/.exec(text.trim().replace(/[‐‑−]/g, "-"));
  if (found === null) return refused("unreadable", text, options, allowed, whyNoDate(text.trim()));
  const [, year, month, day] = found;
  const date = {
    year: Number(year),
    ...(month === undefined ? {} : { month: Number(month) }),
    ...(day === undefined ? {} : { day: Number(day) }),
  };
  if (!isCalendarDate(date)) return refused("unreadable", text, options, allowed, noSuchDay(date));
  return datesWithin(date, text, options, allowed);
}

function noSuchDay({ year, month = 1 }: CalendarDate): string {
  if (year === 0) return "Years count from 0001.";
  if (month < 1 || month > 12) return "Months count from 01 to 12.";
  const days = daysInMonth(year, month);
  return `${monthNames[month - 1] ?? ""} ${year} has days 01 to ${days}.`;
}

function datesWithin(
  date: CalendarDate,
  text: string,
  options: DateOptions,
  allowed: string,
): Reading<CalendarDate> {
  const { min, max, precision = "year" } = options;
  const isVague =
    (precision !== "year" && date.month === undefined) ||
    (precision === "day" && date.day === undefined);
  if (isVague) return refused("unreadable", text, options, allowed, `Write ${writing[precision]}.`);
  if (min !== undefined && dateBefore(date, min)) {
    return refused("too-small", text, options, allowed, `Give ${printDate(min)} or later.`);
  }
  if (max !== undefined && dateBefore(max, date)) {
    return refused("too-large", text, options, allowed, `Give ${printDate(max)} or earlier.`);
  }
  return understood(date);
}

/**
 * A date with its month's name: "25 April 2026", "April 2026", "2026".
 *
 * @throws ProblemError for a date that does not exist (`unreadable`)
 * @rule day, month's name, year
 * @source common practice
 * @example
 * printDate({ year: 2026, month: 4, day: 25 }) // => "25 April 2026"
 */
export function printDate(date: CalendarDate): string {
  const { year, month, day } = requireDate(date);
  const name = month === undefined ? undefined : monthNames[month - 1];
  return [day, name, year].filter((part) => part !== undefined).join(" ");
}

/**
 * A date as ISO text: "2026-04-25", "2026-04", "2026".
 *
 * @throws ProblemError for a date that does not exist (`unreadable`)
 * @rule year, month and day in that order, as the standard writes them
 * @source iso-8601
 * @example
 * isoDate({ year: 2026, month: 4 }) // => "2026-04"
 */
export function isoDate(date: CalendarDate): string {
  const { year, month, day } = requireDate(date);
  const two = (part: number) => String(part).padStart(2, "0");
  return [String(year).padStart(4, "0"), month, day]
    .filter((part) => part !== undefined)
    .map((part) => (typeof part === "number" ? two(part) : part))
    .join("-");
}

/**
 * Whole days from one date to another, negative where the second is earlier. A year or month
 * stands for its first day.
 *
 * @throws ProblemError for a date that does not exist (`unreadable`)
 * @rule difference of day numbers in the Gregorian calendar
 * @source iso-8601
 * @example
 * daysBetween({ year: 2026, month: 3, day: 1 }, { year: 2026, month: 4, day: 25 }) // => 55
 */
export function daysBetween(from: CalendarDate, to: CalendarDate): number {
  return firstDay(requireDate(to, ["to"])) - firstDay(requireDate(from, ["from"]));
}

// More than from the year 1 to the year 9999.
const mostDays = 4_000_000;

/**
 * The date so many days later, or earlier for a negative count. A year or month stands for its
 * first day.
 *
 * @throws ProblemError for a date that does not exist or a count that is not whole (`unreadable`,
 * `missing`, `wrong-unit`), a result outside the years 1 to 9999 (`too-large`, `too-small`)
 * @rule day numbers of the Gregorian calendar add
 * @source iso-8601
 * @example
 * isoDate(addDays({ year: 2026, month: 4, day: 25 }, -30)) // => "2026-03-26"
 */
export function addDays(date: CalendarDate, days: number): CalendarDate {
  const start = firstDay(requireDate(date));
  requireCount(days, ["days"], { min: -mostDays, max: mostDays });
  const number = start + days;
  const first = firstDay({ year: 1 });
  const last = firstDay({ year: 9999, month: 12, day: 31 });
  if (number >= first && number <= last) return dateOfDay(number);
  throw new ProblemError([
    {
      code: number < first ? "too-small" : "too-large",
      path: ["days"],
      allowed: "a date in the years 1 to 9999",
      received: receivedText(days),
      remedy: "Give fewer days.",
    },
  ]);
}

/**
 * Whole years from one date to another, as ages are counted; negative where the second is earlier.
 * Only what both dates give is compared: from 2004 to April 2026 is 22.
 *
 * @throws ProblemError for a date that does not exist (`unreadable`)
 * @rule difference of years, less one where the day of the year is not yet reached
 * @source common practice
 * @example
 * yearsBetween({ year: 2004, month: 6 }, { year: 2026, month: 4 }) // => 21
 */
export function yearsBetween(from: CalendarDate, to: CalendarDate): number {
  const a = requireDate(from, ["from"]);
  const b = requireDate(to, ["to"]);
  if (b.year < a.year) return 0 - yearsBetween(b, a);
  const months = a.month === undefined || b.month === undefined ? 0 : b.month - a.month;
  const days = a.day === undefined || b.day === undefined ? 0 : b.day - a.day;
  const isShort = months < 0 || (months === 0 && days < 0);
  const years = b.year - a.year - (isShort ? 1 : 0);
  return Math.max(0, years);
}
