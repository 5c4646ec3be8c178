import { dayInWords } from "../days.ts";

/** Said on the sheet, on paper too. */
export const whatPlansHold =
  "A plan holds what was typed into entries and tables when it was kept, those of the notebooks that are used here included; all else is as the notebook has it. Formulas and prose are the notebook’s: when one changes, every plan is worked out anew.";

/** The day of an ISO instant where the reader is, in words. */
export function dayOf(instant: string): string {
  const date = new Date(instant);
  if (Number.isNaN(date.getTime())) return instant;
  const two = (part: number) => String(part).padStart(2, "0");
  return dayInWords(`${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`);
}

/** Seconds as people say them: "40 seconds", "2 minutes". */
export function timeInWords(seconds: number): string {
  if (seconds < 90)
    return seconds === 1 ? "1 second" : `${Math.max(1, Math.round(seconds))} seconds`;
  return `${Math.round(seconds / 60)} minutes`;
}
