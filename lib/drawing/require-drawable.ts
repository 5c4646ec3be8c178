import { type Problem, ProblemError } from "../check/index.ts";

/** Throws unless the units are known and the widths are drawable. */
export function requireDrawable(units: unknown, widths: readonly unknown[]): void {
  const problems: Problem[] = [];
  if (units !== "us" && units !== "metric") {
    problems.push({
      code: units === undefined ? "missing" : "unknown",
      path: ["units"],
      allowed: "us or metric",
      received: String(units ?? ""),
      remedy: "Write us or metric.",
    });
  }
  widths.forEach((width, at) => {
    const fine = typeof width === "number" && width >= 200 && width <= 2000;
    if (fine) return;
    const code =
      typeof width !== "number" || Number.isNaN(width)
        ? "unreadable"
        : width < 200
          ? "too-small"
          : "too-large";
    problems.push({
      code,
      path: ["widths", at + 1],
      allowed: "a width from 200 to 2,000 pixels",
      received: String(width),
      remedy: "Give widths in pixels, the narrowest first.",
    });
  });
  if (problems.length > 0) throw new ProblemError(problems);
}
