import { type Path, ProblemError } from "../check/index.ts";
import { receivedText } from "./received.ts";

/**
 * A date as people know it: a year, a month of it, or a day. Months and days count from 1; there
 * is no clock and no zone.
 */
export interface CalendarDate {
  readonly year: number;
  readonly month?: number;
  readonly day?: number;
}

const monthDays = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

function isWholeFrom(value: unknown, from: number, to: number): value is number {
  return typeof value === "number" && Number.isInteger(value) && value >= from && value <= to;
}

/** Days of a month, by the Gregorian rule for leap years. */
export function daysInMonth(year: number, month: number): number {
  const isLeap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return month === 2 && isLeap ? 29 : (monthDays[month - 1] ?? 0);
}

/**
 * Whether a value is a date: a whole year from 1 to 9999, with a month and day that exist where
 * they are given, and nothing else in the record.
 *
 * @rule the Gregorian calendar's months and leap years
 * @source iso-8601
 * @example
 * isCalendarDate({ year: 2024, month: 2, day: 29 }) // => true
 * isCalendarDate({ year: 2026, month: 2, day: 29 }) // => false
 */
export function isCalendarDate(value: unknown): value is CalendarDate {
  if (typeof value !== "object" || value === null) return false;
  const { year, month, day, ...rest } = value as Record<string, unknown>;
  if (Object.keys(rest).length > 0 || !isWholeFrom(year, 1, 9999)) return false;
  if (month === undefined) return day === undefined;
  if (!isWholeFrom(month, 1, 12)) return false;
  return day === undefined || isWholeFrom(day, 1, daysInMonth(year, month));
}

// Days since 1 March of year 0, so that the leap day ends a year.
function dayNumber(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const m = (month + 9) % 12;
  const leapDays = Math.floor(y / 4) - Math.floor(y / 100) + Math.floor(y / 400);
  return y * 365 + leapDays + Math.floor((m * 153 + 2) / 5) + day - 1;
}

/** The number of the first day a date can mean. */
export function firstDay({ year, month = 1, day = 1 }: CalendarDate): number {
  return dayNumber(year, month, day);
}

/** The number of the last day a date can mean. */
export function lastDay({ year, month = 12, day }: CalendarDate): number {
  return dayNumber(year, month, day ?? daysInMonth(year, month));
}

/** The date of a day number. */
export function dateOfDay(number: number): CalendarDate {
  let year = Math.floor(number / 365.2425) + 1;
  while (dayNumber(year, 1, 1) > number) year -= 1;
  let month = 12;
  while (dayNumber(year, month, 1) > number) month -= 1;
  return { year, month, day: number - dayNumber(year, month, 1) + 1 };
}

/** A date, or the error that it is none. */
export function requireDate(date: unknown, path: Path = ["date"]): CalendarDate {
  if (isCalendarDate(date)) return date;
  throw new ProblemError([
    {
      code: date === undefined || date === null ? "missing" : "unreadable",
      path,
      allowed: "a date that exists: year, perhaps month, perhaps day",
      received: receivedText(date ?? undefined),
      remedy: "Give year, month and day as numbers, as { year: 2026, month: 4, day: 25 }.",
    },
  ]);
}

/**
 * Whether the first date is over before the second begins; so 2026 is not before April 2026.
 *
 * @throws ProblemError for a date that does not exist (`unreadable`), nothing (`missing`)
 * @rule the last day of the first is before the first day of the second
 * @source iso-8601
 * @example
 * dateBefore({ year: 2003 }, { year: 2004 }) // => true
 */
export function dateBefore(a: CalendarDate, b: CalendarDate): boolean {
  return lastDay(requireDate(a, ["a"])) < firstDay(requireDate(b, ["b"]));
}
