import type { Reading } from "../check/index.ts";
import type { GoodsSize } from "../cost/index.ts";
import {
  foot,
  inch,
  kilogram,
  type Length,
  litre,
  readCount,
  readLength,
  readMass,
  readVolume,
  times,
} from "../measure/index.ts";
import type { CellPlace } from "../table/index.ts";
import { isBareNumber, withHeadingUnit } from "./bare-number.ts";

/** A size as written: two or three sides, or a single quantity or count. */
export type WrittenSize =
  | { readonly kind: "sides"; readonly sides: readonly Length[]; readonly text: string }
  | { readonly kind: "goods"; readonly size: GoodsSize };

const smallest = {
  length: times(inch, 0.01),
  volume: times(litre, 0.001),
  mass: times(kilogram, 0.001),
};
const largest = {
  length: times(foot, 10_000),
  volume: times(litre, 1e6),
  mass: times(kilogram, 1e6),
};

const allowed =
  "a length (8 ft), a volume (2 cu ft), a mass (40 lb), a count (50), or sides (6 ft x 100 ft)";

/**
 * Reads a size: sides with `x` between them (a unit at the last serves all), a count where no unit
 * is written, else a volume, a mass or a length by its unit.
 */
export function readSize(text: string, place: CellPlace): Reading<WrittenSize> {
  const parts = text.split(/\s*[x×*]\s*/i);
  if (parts.length > 1) return readSides(text, parts, place);
  if (isBareNumber(text) && place.unit === undefined) return readPack(text, place);
  const { path, decimal } = place;
  const options = { path, decimal };
  const withUnit = withHeadingUnit(text, place);
  const volume = readVolume(withUnit, { ...options, min: smallest.volume, max: largest.volume });
  if (volume.ok) return goods({ kind: "volume", volume: volume.value });
  const mass = readMass(withUnit, { ...options, min: smallest.mass, max: largest.mass });
  if (mass.ok) return goods({ kind: "mass", mass: mass.value });
  const length = readLength(withUnit, { ...options, min: smallest.length, max: largest.length });
  if (length.ok) return goods({ kind: "length", length: length.value });
  const readings = [volume, mass, length];
  const ranged = readings.find((reading) => !reading.ok && /^too-/.test(reading.problem.code));
  return ranged !== undefined && !ranged.ok ? ranged : unreadable(text, place);
}

function readSides(text: string, parts: readonly string[], place: CellPlace): Reading<WrittenSize> {
  if (parts.length > 3) return unreadable(text, place);
  const unit = /([a-z″"′'”]+\.?)\s*$/i.exec(parts.at(-1) ?? "")?.[1];
  const sides: Length[] = [];
  for (const part of parts) {
    const own = isBareNumber(part) ? (unit ?? place.unit) : undefined;
    const reading = readLength(own === undefined ? part : `${part} ${own}`, {
      path: place.path,
      decimal: place.decimal,
      min: smallest.length,
      max: largest.length,
    });
    if (!reading.ok) return { ok: false, problem: { ...reading.problem, received: text } };
    sides.push(reading.value);
  }
  return { ok: true, value: { kind: "sides", sides, text } };
}

function readPack(text: string, { path, decimal }: CellPlace): Reading<WrittenSize> {
  const reading = readCount(text, { path, decimal, min: 1, max: 1_000_000 });
  if (reading.ok) return goods({ kind: "count", count: reading.value });
  const { code } = reading.problem;
  const remedy =
    code === "unreadable"
      ? "Add a unit, as 8 ft or 2 cu ft, or write a whole count."
      : reading.problem.remedy;
  return { ok: false, problem: { ...reading.problem, allowed, remedy } };
}

function goods(size: GoodsSize): Reading<WrittenSize> {
  return { ok: true, value: { kind: "goods", size } };
}

function unreadable(text: string, { path }: CellPlace): Reading<never> {
  const code = text.trim() === "" ? "missing" : "unreadable";
  const remedy = "Write what one of it holds, with its unit; a count has none.";
  return { ok: false, problem: { code, path, allowed, received: text, remedy } };
}
