import type { Path } from "../check/index.ts";
import { type Checks, metre, millimetre } from "../measure/index.ts";
import { metresPerInch } from "./saw-length.ts";

/** Metres in words that serve both sides of the ocean: "1.5 in (38.1 mm)". */
export function sizeInWords(lengthM: number): string {
  const inches = Number((lengthM / metresPerInch).toFixed(3));
  return `${inches} in (${Number((lengthM * 1000).toFixed(1))} mm)`;
}

/** Adds what is wrong with a section: none, not a section, or sizes that no board has. */
export function checkSection(checks: Checks, value: unknown, path: Path): void {
  if (typeof value !== "object" || value === null) {
    const missing = value === undefined || value === null;
    checks.add({
      code: missing ? "missing" : "unreadable",
      path,
      allowed: "a section, as readSection gives it",
      received: missing ? "" : String(value),
      remedy: "Read it first: readSection(“2x12”).",
    });
    return;
  }
  const { name, thickness, width } = value as Record<string, unknown>;
  const bounds = { min: millimetre, max: metre };
  checks
    .text(name, [...path, "name"])
    .quantity(thickness, "length", [...path, "thickness"], bounds)
    .quantity(width, "length", [...path, "width"], bounds);
}
