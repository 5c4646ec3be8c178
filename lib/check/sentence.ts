import type { Path, Problem, ProblemCode } from "./problem.ts";

/**
 * A path in words: `["beds", 3, "length"]` is "beds, row 3, length"; the empty path is no words.
 *
 * @rule numbers are rows, counted from 1
 * @source common practice
 * @example
 * placeInWords(["beds", 3, "length"]) // => "beds, row 3, length"
 */
export function placeInWords(path: Path): string {
  return path.map((step) => (typeof step === "number" ? `row ${step}` : step)).join(", ");
}

const whatIsWrong: Readonly<Record<ProblemCode, string>> = {
  missing: "nothing was given",
  unreadable: "can't be read",
  "wrong-unit": "is of another kind or has no unit",
  "too-small": "is too small",
  "too-large": "is too large",
  unknown: "is not known here",
  duplicate: "is given more than once",
  "mixed-currency": "mixes currencies",
  contradiction: "contradicts what is given elsewhere",
  unpriced: "has no price",
  "no-fit": "is longer than every board",
};

const longestReceived = 80;

/** What was received on one line, cut where it would drown the sentence. */
function quoted(received: string): string {
  const line = received.replace(/\s+/g, " ").trim();
  const letters = [...line];
  const cut = letters.length > longestReceived;
  return `“${cut ? `${letters.slice(0, longestReceived).join("")}…` : line}”`;
}

/**
 * The sentence a person reads: the place, what was received and what is wrong with it, what is
 * allowed, what to do, and other places it concerns.
 *
 * @rule place: what was received and why not; what is allowed. What to do.
 * @source common practice
 * @example
 * sentence({ code: "too-small", path: ["kerf"], allowed: "a length from 0 in to 1/2 in", received: "-1 in", remedy: "Give at least 0 in." }) // => "kerf: “-1 in” is too small; allowed is a length from 0 in to 1/2 in. Give at least 0 in."
 */
export function sentence(problem: Problem): string {
  const { code, path, allowed, received, remedy, also = [] } = problem;
  const place = placeInWords(path);
  // Blank cells and missing arguments leave nothing to quote, whatever the kind of problem.
  const isNothing = received.trim() === "";
  const what = isNothing ? whatIsWrong.missing : `${quoted(received)} ${whatIsWrong[code]}`;
  const verb = isNothing ? "needed" : "allowed";
  const where = also.length === 0 ? "" : ` It concerns also: ${also.map(placeInWords).join("; ")}.`;
  const start = place === "" ? "" : `${place}: `;
  return `${start}${what}; ${verb} is ${allowed}. ${remedy}${where}`.trim();
}
