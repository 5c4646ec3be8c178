import { Given } from "../measure/given.ts";
import {
  type Area,
  areaDimension,
  foot,
  inch,
  type Length,
  lengthDimension,
  quantity,
  times,
  type Volume,
} from "../measure/index.ts";
import { volumeLimits } from "./limits.ts";

/** How the heap lies. */
export interface HeapRoomOptions {
  /** Along the bed, of the middle of its height, 1 in to 1000 ft. */
  readonly length: Length;
  /** Greatest height, 1 in to 20 ft; default 2 ft: higher is hard to heap. */
  readonly highest?: Length;
  /** Slope of its sides in degrees, 10 to 60; default 35. */
  readonly slope?: number;
}

/** The ground that a loose heap takes. */
export interface HeapRoom {
  readonly width: Length;
  readonly height: Length;
  /** On the ground with both its sloping ends. */
  readonly length: Length;
  readonly area: Area;
}

const longest = { min: inch, max: times(1000, foot) };

/**
 * The ground that a heap of loose soil takes beside a bed: a ridge whose sides slope, flat on top where
 * it would be too high. Its ends slope
 * as its sides do. A sheet under it wants a hand's breadth more all round.
 *
 * @param loose 0 to 1,000,000 m3.
 * @param options `length` of the ridge, 1 in to 1000 ft; `highest`, 1 in to 20 ft, default 2 ft; `slope`
 * of its sides, 10 to 60 degrees, default 35.
 * @throws ProblemError where a field is missing, of another kind or out of range.
 * @rule section = volume / length; a ridge has height = root of (section x tan slope); flat-topped, width = section / height + height / tan slope; length on the ground = length + height / tan slope
 * @source from memory
 * @example
 * heapRoom(times(20, cubicFoot), { length: times(8, foot) }).height // => 1 ft 3 7/8 in
 */
export function heapRoom(loose: Volume, options: HeapRoomOptions): HeapRoom {
  const given = new Given();
  const m3 = given.si(loose, "volume", ["loose"], volumeLimits);
  const chosen = given.fields(options, ["options"]);
  const lengthM = given.si(chosen.length, "length", ["length"], longest);
  const highestM = given.si(chosen.highest ?? times(2, foot), "length", ["highest"], {
    min: inch,
    max: times(20, foot),
  });
  const slope = given.plain(chosen.slope ?? 35, ["slope"], { min: 10, max: 60 });
  given.done();
  const steep = Math.tan((slope * Math.PI) / 180);
  const sectionM2 = m3 / lengthM;
  const ridgeM = Math.sqrt(sectionM2 * steep);
  const heightM = Math.min(ridgeM, highestM);
  const widthM = heightM > 0 ? sectionM2 / heightM + heightM / steep : 0;
  const groundM = heightM > 0 ? lengthM + heightM / steep : 0;
  return {
    width: quantity(widthM, lengthDimension),
    height: quantity(heightM, lengthDimension),
    length: quantity(groundM, lengthDimension),
    area: quantity(widthM * groundM, areaDimension),
  };
}
