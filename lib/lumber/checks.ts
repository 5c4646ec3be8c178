import { type Path, requireRecord } from "../check/index.ts";
import { type Checks, metre, millimetre, printQuantity, times } from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";
import { metresPerInch } from "./saw-length.ts";

/** Metres in words that serve both sides of the ocean: "1.5 in (38.1 mm)", "18 ft (5486 mm)". */
export function sizeInWords(lengthM: number): string {
  const inches = Number((lengthM / metresPerInch).toFixed(3));
  if (inches < 24) return `${inches} in (${Number((lengthM * 1000).toFixed(1))} mm)`;
  const words = printQuantity(times(lengthM, metre), { system: "us" });
  return `${words} (${(lengthM * 1000).toFixed(0)} mm)`;
}

/** Adds what is wrong with a section: none, not a section, or sizes that no board has. */
export function checkSection(checks: Checks, value: unknown, path: Path): void {
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    checks.add({
      code: value === undefined || value === null ? "missing" : "unreadable",
      path,
      allowed: "a section, as readSection gives it",
      received: receivedText(value ?? undefined),
      remedy: "Read it first: readSection(“2x12”).",
    });
    return;
  }
  const { name, thickness, width, nominal = null } = value as Record<string, unknown>;
  checks.text(name, [...path, "name"]);
  checkFaces(checks, { thickness, width }, path);
  if (nominal === null) return;
  checks.attempt(() => {
    requireRecord(nominal, [...path, "nominal"]);
    checkFaces(checks, nominal as Faces, [...path, "nominal"]);
  });
}

interface Faces {
  readonly thickness?: unknown;
  readonly width?: unknown;
}

function checkFaces(checks: Checks, { thickness, width }: Faces, path: Path): void {
  const bounds = { min: millimetre, max: metre };
  checks
    .quantity(thickness, "length", [...path, "thickness"], bounds)
    .quantity(width, "length", [...path, "width"], bounds);
}

/** Adds the problem of a timber that is no text; none is none. */
export function checkTimber(checks: Checks, timber: unknown, path: Path): void {
  if (timber === undefined || typeof timber === "string") return;
  checks.text(timber, path);
}
