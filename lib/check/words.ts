import type { Path, Problem, ProblemCode } from "./problem.ts";

/** A path in words, as `placeInWords` says it. */
export function pathInWords(path: Path): string {
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

/** The sentence of a problem, as `sentence` says it; errors are made of it, so it refuses nothing. */
export function problemInWords(problem: Problem): string {
  const { code, path, allowed, received, remedy, also = [] } = problem;
  const place = pathInWords(path);
  // Blank cells and missing arguments leave nothing to quote, whatever the kind of problem.
  const isNothing = received.trim() === "";
  const what = isNothing ? whatIsWrong.missing : `${quoted(received)} ${whatIsWrong[code]}`;
  const verb = isNothing ? "needed" : "allowed";
  const where = also.length === 0 ? "" : ` It concerns also: ${also.map(pathInWords).join("; ")}.`;
  const start = place === "" ? "" : `${place}: `;
  return `${start}${what}; ${verb} is ${allowed}. ${remedy}${where}`.trim();
}
