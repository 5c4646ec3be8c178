import type { Caution } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import {
  type Length,
  lengthDimension,
  quantity,
  type Volume,
  volumeDimension,
} from "../measure/index.ts";
import { leadInOldSoil } from "../safety/index.ts";
import { type BedSides, insideM } from "./bed-inside.ts";
import { countLimits, depthLimits } from "./limits.ts";
import { type SwellingSoil, swellFactors } from "./swell.ts";

/** A trench along the boards that are to be changed. */
export interface Trench {
  /** 1 mm to 20 ft; default 12 in. */
  readonly width?: Length;
  /** How many long sides, 0 to 2; default 2. */
  readonly sides?: number;
  /** How many ends, 0 to 2; default 2. */
  readonly ends?: number;
}

/** What is dug out of a bed, and what is wanted in it afterwards. */
export interface DigOutOptions {
  /** Settled depth there, 0 to 20 ft. */
  readonly depthNow: Length;
  /** Settled depth wanted, 0 to 20 ft; default what is there. */
  readonly wanted?: Length;
  /** Only a trench along the boards; default all of it. */
  readonly trench?: Trench;
  /** Share that does not go back: roots, stones, what blows away; 0 to 1, default 0.02. */
  readonly lost?: number;
  /** How many beds alike, 1 to 100,000; default 1. */
  readonly count?: number;
}

/** What comes out of a bed and goes back. */
export interface DigOut {
  /** What it took up in place. */
  readonly inPlace: Volume;
  /** What the loose heap takes up beside the bed. */
  readonly loose: Volume;
  /** What stays in the bed. */
  readonly stays: Volume;
  /** What goes back, once it has settled again. */
  readonly back: Volume;
  /** What then is missing to the depth wanted, settled; none where there is enough. */
  readonly missing: Volume;
  /** The same as a depth over the whole bed. */
  readonly missingDepth: Length;
  /** Whether the trenches meet, so that they are the whole bed. */
  readonly whole: boolean;
  readonly cautions: readonly Caution[];
}

/**
 * The soil dug out of a bed to change its boards: all of it, or a trench along them; how large its
 * heap is, what goes back and what then is missing. Put back, it settles to what it took up before.
 *
 * @param bed outside length and width, 4 in to 1000 ft, and `section.thickness`, 0 to 1 ft.
 * @param soil a row with `bankToLoose` and `bankToCompacted`, each from 0.5 to 3.
 * @param options `depthNow`; `wanted`, default that; `trench`, default none, with `width`, default 12
 * in, `sides` and `ends`, default 2 each; share `lost`, default 0.02; `count` of beds alike, default 1.
 * @throws ProblemError naming every field that is missing, of another kind or out of range.
 * @rule trench = whole area - what stays between the trenches; loose = in place x bank to loose factor; missing = wanted - what stays - what goes back
 * @source fm-5-434, common practice, from memory
 * @example
 * const bed = { length: times(99, inch), width: times(51, inch), section: { thickness: times(1.5, inch) } };
 * const earth = { soil: "common earth", bankToLoose: 1.25, bankToCompacted: 0.9 };
 * const dug = digOut(bed, earth, { depthNow: times(9, inch), trench: {} });
 * dug.inPlace // => 15 cu ft
 * dug.loose // => 18.8 cu ft
 */
export function digOut(bed: BedSides, soil: SwellingSoil, options: DigOutOptions): DigOut {
  const given = new Given();
  const inside = insideM(given, bed, ["bed"]);
  const factors = swellFactors(given, soil, ["soil"]);
  const chosen = given.fields(options, ["options"]);
  const depthM = given.si(chosen.depthNow, "length", ["depthNow"], depthLimits);
  const wantedM =
    chosen.wanted === undefined
      ? depthM
      : given.si(chosen.wanted, "length", ["wanted"], depthLimits);
  const lost = given.plain(chosen.lost ?? 0.02, ["lost"], { min: 0, max: 1 });
  const count = given.whole(chosen.count ?? 1, ["count"], countLimits);
  const dug = chosen.trench === undefined ? 1 : trenchShare(given, chosen.trench, inside);
  given.done();

  const areaM2 = inside.lengthM * inside.widthM * count;
  const inPlaceM3 = areaM2 * depthM * dug;
  const staysM3 = areaM2 * depthM * (1 - dug);
  const backM3 = inPlaceM3 * (1 - lost);
  const missingM3 = Math.max(0, areaM2 * wantedM - staysM3 - backM3);
  const volume = (m3: number): Volume => quantity(m3, volumeDimension);
  return {
    inPlace: volume(inPlaceM3),
    loose: volume(inPlaceM3 * factors.loose),
    stays: volume(staysM3),
    back: volume(backM3),
    missing: volume(missingM3),
    missingDepth: quantity(missingM3 / areaM2, lengthDimension),
    whole: dug > 1 - 1e-9,
    cautions: inPlaceM3 > 0 ? [leadInOldSoil({ because: "soil dug out of old beds" })] : [],
  };
}

/** The share of a bed's area that trenches take: corners count once. */
function trenchShare(
  given: Given,
  trench: unknown,
  { lengthM, widthM }: { readonly lengthM: number; readonly widthM: number },
): number {
  const row = given.fields(trench, ["trench"]);
  const widthWanted = row.width ?? quantity(0.3048, lengthDimension);
  const atM = given.si(widthWanted, "length", ["trench", "width"], {
    min: quantity(0.001, lengthDimension),
    max: depthLimits.max,
  });
  const many = (key: "sides" | "ends"): number =>
    given.whole(row[key] ?? 2, ["trench", key], { min: 0, max: 2 });
  const between = (wholeM: number, trenches: number): number =>
    Math.max(0, wholeM - trenches * atM) / wholeM;
  return 1 - between(widthM, many("sides")) * between(lengthM, many("ends"));
}
