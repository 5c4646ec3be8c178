import { Given } from "../measure/given.ts";
import { type Length, lengthDimension, printQuantity, quantity } from "../measure/index.ts";
import { depthLimits } from "./limits.ts";

/** What is kept above the soil. */
export interface RoomForSoilOptions {
  /** Depth of mulch on the soil, 0 to 20 ft; default 1 in. */
  readonly mulch?: Length;
  /** Board left free above the mulch, 0 to 20 ft; default 1 in. */
  readonly free?: Length;
}

/**
 * The settled depth of soil a wall has room for, under the mulch and a rim left free.
 *
 * @param wall height of the boards, 0 to 20 ft.
 * @param options `mulch`, default 1 in, and `free` board above it, default 1 in; each 0 to 20 ft.
 * @throws ProblemError where a length is missing, of another kind or out of range, or where mulch
 * and free board are together higher than the wall (`contradiction`).
 * @rule depth = wall height - mulch - free board
 * @source common practice
 * @example
 * roomForSoil(times(11.25, inch)) // => 9 1/4 in
 */
export function roomForSoil(wall: Length, options: RoomForSoilOptions = {}): Length {
  const given = new Given();
  const chosen = given.fields(options, ["options"]);
  const wallM = given.si(wall, "length", ["wall"], depthLimits);
  const mulchM = given.si(
    chosen.mulch ?? quantity(0.0254, lengthDimension),
    "length",
    ["mulch"],
    depthLimits,
  );
  const freeM = given.si(
    chosen.free ?? quantity(0.0254, lengthDimension),
    "length",
    ["free"],
    depthLimits,
  );
  const roomM = wallM - mulchM - freeM;
  if (given.clean && roomM < -dustM) {
    given.add({
      code: "contradiction",
      path: ["wall"],
      allowed: "a wall at least as high as the mulch and the free board together",
      received: `${inWords(wallM)} under ${inWords(mulchM + freeM)} of mulch and free board`,
      remedy: "Make the wall higher, or the mulch or the free board less.",
    });
  }
  given.done();
  return quantity(Math.max(0, roomM), lengthDimension);
}

// A tenth of a micrometre: what sums of inches are off by, and more.
const dustM = 1e-7;
const inWords = (m: number): string => printQuantity(quantity(m, lengthDimension));
