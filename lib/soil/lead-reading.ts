import type { Caution } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import { type CalendarDate, isCalendarDate, isoDate } from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";
import { leadInOldSoil } from "../safety/index.ts";

/** A level of lead with what it means: a row of the table of soil lead. */
export interface LeadLevel {
  /** mg/kg, which is ppm; above 0, to 1,000,000. */
  readonly level: number;
  readonly meaning: string;
  /** Year, month or day from which it holds, as `2025-10-16`; null where that is not known. */
  readonly since: string | null;
  /** To when it held; null where it still does. */
  readonly until: string | null;
  readonly source: string;
}

/** A figure of a laboratory against the levels. */
export interface LeadReading {
  readonly ppm: number;
  /** Levels in force that it reaches, the highest first. */
  readonly reached: readonly LeadLevel[];
  /** The next above it; null where it is above all. */
  readonly next: LeadLevel | null;
  /** In a sentence. */
  readonly words: string;
  readonly cautions: readonly Caution[];
}

/**
 * What a laboratory's figure for lead in soil means by the levels in force on a day. A level is no
 * line between safe and not: less is better, and children need most care.
 *
 * @param ppm mg/kg of lead, 0 to 1,000,000.
 * @param levels rows of the table of soil lead.
 * @param on the day whose levels count.
 * @throws ProblemError where a field is missing, of another kind or out of range, a date is not written
 * as in ISO 8601, or no level is in force on that day.
 * @rule a level is in force from `since`, where that is known, up to, but not on, `until`
 * @source epa-lead-2025, epa-lead-2024, umd-lead
 * @example
 * const today = { year: 2026, month: 4, day: 1 };
 * leadReading(250, published.soilLead, today).reached[0].level // => 200
 * leadReading(250, published.soilLead, today).next.level // => 400
 */
export function leadReading(
  ppm: number,
  levels: readonly LeadLevel[],
  on: CalendarDate,
): LeadReading {
  const given = new Given();
  const found = given.plain(ppm, ["ppm"], { min: 0, max: 1_000_000 });
  if (!isCalendarDate(on)) {
    given.add({
      code: on === undefined || on === null ? "missing" : "unreadable",
      path: ["on"],
      allowed: "a date: year, month and day",
      received: receivedText(on ?? undefined),
      remedy: "Give the day whose levels count.",
    });
  }
  const rows = given.list(levels, ["levels"], 1).map((level, at) => {
    const path = ["levels", at + 1];
    const row = given.fields(level, path);
    given.name(row.meaning, [...path, "meaning"]);
    return {
      level: given.plain(row.level, [...path, "level"], { above: 0, max: 1_000_000 }),
      since: dayOf(given, row.since, [...path, "since"]),
      until: dayOf(given, row.until, [...path, "until"]),
      at,
    };
  });
  const day = given.clean ? wholeDay(on) : "";
  const inForce = rows.filter(
    ({ since, until }) => (since === null || since <= day) && (until === null || until > day),
  );
  if (given.clean && inForce.length === 0) {
    given.add({
      code: "missing",
      path: ["levels"],
      allowed: `a level in force on ${day}`,
      received: "none",
      remedy: "Give the levels of that time.",
    });
  }
  given.done();
  const known = inForce.sort((a, b) => b.level - a.level).flatMap(({ at }) => levels[at] ?? []);
  const reached = known.filter(({ level }) => found >= level);
  const next = known.filter(({ level }) => found < level).at(-1) ?? null;
  return {
    ppm: found,
    reached,
    next,
    words: inWords(found, reached[0], next),
    cautions: reached.length > 0 ? [leadInOldSoil({ because: `${found} ppm of lead` })] : [],
  };
}

/** The first day of a year, month or day in ISO form; null where none is known. */
function dayOf(given: Given, value: unknown, path: readonly (string | number)[]): string | null {
  if (value === null) return null;
  const text = typeof value === "string" ? value.trim() : undefined;
  const [, ...parts] = /^(\d{4})(?:-(\d\d)(?:-(\d\d))?)?$/.exec(text ?? "") ?? [];
  const [year, month, day] = parts.map((part) => part && Number(part));
  const date = { year, ...(month !== undefined && { month }), ...(day !== undefined && { day }) };
  if (isCalendarDate(date)) return wholeDay(date);
  given.add({
    code: value === undefined || text === "" ? "missing" : "unreadable",
    path,
    allowed: "a year, month or day, as 2025-10-16, or null where it is not known",
    received: receivedText(value),
    remedy: "Write the date in ISO form.",
  });
  return null;
}

/** A date that is known to the year or month counts from its first day. */
function wholeDay(date: CalendarDate): string {
  const { year, month = 1, day = 1 } = date;
  return isoDate({ year, month, day });
}

function inWords(ppm: number, reached: LeadLevel | undefined, next: LeadLevel | null): string {
  const of = ({ level, meaning }: LeadLevel): string => `${level} ppm (${meaning})`;
  if (reached === undefined) return `${ppm} ppm is below ${next ? of(next) : "all levels"}.`;
  return next === null
    ? `${ppm} ppm reaches ${of(reached)}, the highest level.`
    : `${ppm} ppm reaches ${of(reached)}, and is below ${of(next)}.`;
}
