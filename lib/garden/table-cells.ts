import type { Reading } from "../check/index.ts";
import { readSection, type Section } from "../lumber/index.ts";
import {
  type CalendarDate,
  foot,
  kilogram,
  type Length,
  litre,
  type Mass,
  type Money,
  moneyDimension,
  quantity,
  readChoice,
  readCount,
  readDate,
  readLength,
  readMass,
  readMoney,
  readPercent,
  times,
  type Volume,
} from "../measure/index.ts";
import type { CellPlace, CellReader } from "../table/index.ts";

// Readers of single fields, with the limits that the garden's tables share.

export const nothing: Length = times(foot, 0);
export const noVolume: Volume = times(litre, 0);
export const noMoney: Money = quantity(0, moneyDimension);

/** Text that is a name; blanks inside are made single. */
export const nameCell: CellReader<string> = (text, place) => {
  const name = text.trim().replace(/\s+/g, " ");
  if (name === "") return refused(text, place, "missing", "a name", "Write a name of your own.");
  if (name.length > 80) {
    return refused(text, place, "too-large", "a name of at most 80 letters", "Shorten the name.");
  }
  return { ok: true, value: name };
};

/** A timber's name in small letters, on which price lists are matched. */
export const timberCell: CellReader<string> = (text, place) => {
  const reading = nameCell(text, place);
  return reading.ok ? { ok: true, value: reading.value.toLowerCase() } : reading;
};

export const sectionCell: CellReader<Section> = (text, { path }) => readSection(text, { path });

export function lengthCell(min: Length, max: Length): CellReader<Length> {
  return (text, place) => readLength(text, { ...place, min, max });
}

export function countCell(min: number, max: number): CellReader<number> {
  return (text, place) => readCount(text, { path: place.path, min, max });
}

const million: Money = quantity(1_000_000, moneyDimension);

/** A sum of money from nothing to a million; a currency in the heading is that of bare numbers. */
export const moneyCell: CellReader<Money> = (text, { path, decimal, unit }) => {
  const reading = readMoney(text, { path, decimal, min: noMoney, max: million });
  if (!reading.ok || reading.value.currency !== undefined || unit === undefined) return reading;
  const headed = readMoney(`${unit} 1`, { path });
  if (!headed.ok || headed.value.currency === undefined) {
    const allowed = "a currency in the heading, as USD or €";
    return refused(unit, { path, decimal }, "unknown", allowed, "Write the currency's code there.");
  }
  return { ok: true, value: quantity(reading.value.si, moneyDimension, headed.value.currency) };
};

export const massCell: CellReader<Mass> = (text, place) =>
  readMass(text, { ...place, min: kilogram, max: times(kilogram, 100_000) });

/** A share from 0 to 100 %; with `%` in the heading the sign may be left out. */
export const percentCell: CellReader<number> = (text, { path, decimal, unit }) =>
  readPercent(text, { path, decimal, min: 0, max: 1, ...(unit === "%" ? { unit } : {}) });

/** A date in living memory or not far ahead. */
export const dateCell: CellReader<CalendarDate> = (text, { path }) =>
  readDate(text, { path, min: { year: 1800 }, max: { year: 2200 } });

export function choiceCell<const T extends string>(choices: readonly T[]): CellReader<T> {
  return (text, { path }) => readChoice(text, { path, choices });
}

/** What another reader reads, or the word `none`. */
export function orNone<T>(read: CellReader<T>): CellReader<T | "none"> {
  return (text, place) =>
    text.trim().toLowerCase() === "none" ? { ok: true, value: "none" } : read(text, place);
}

/** The same with a value for `none`. */
export function noneAs<T>(read: CellReader<T>, value: T): CellReader<T> {
  return (text, place) =>
    text.trim().toLowerCase() === "none" ? { ok: true, value } : read(text, place);
}

export function refused(
  received: string,
  place: CellPlace,
  code: "missing" | "unreadable" | "unknown" | "too-large" | "too-small" | "wrong-unit",
  allowed: string,
  remedy: string,
): Reading<never> {
  return { ok: false, problem: { code, path: place.path, allowed, received, remedy } };
}
