import type { Length } from "../measure/index.ts";

/** What a plan from above needs to know of a bed: a bed of the garden will do. */
export interface DrawnBed {
  readonly name: string;
  /** True outside length and width. */
  readonly length: Length;
  readonly width: Length;
  readonly section: { readonly thickness: Length };
  /** Which boards run through at the corners. Default: `sides`. */
  readonly lap?: "sides" | "ends" | undefined;
  /** Section of the seat board, or `null`. */
  readonly cap?: { readonly width: Length } | null;
  /** Near-left corner on the plan, and whether the length runs north. Without: set in a row. */
  readonly place?:
    | { readonly east: Length; readonly north: Length; readonly turned: boolean }
    | null
    | undefined;
}

/** A bed where it is drawn, in metres, y growing southwards as on the sheet. */
export interface PlacedBed<B extends DrawnBed = DrawnBed> {
  readonly bed: B;
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
  /** Whether the length runs up the sheet. */
  readonly upright: boolean;
}

const pathM = 0.6096;

/** Beds at their places, or below those in rows with 2 ft paths; what was set by us is counted. */
export function bedPlaces<B extends DrawnBed>(
  beds: readonly B[],
  rowM: number,
): { readonly placed: readonly PlacedBed<B>[]; readonly setInRows: number } {
  const own = beds.flatMap(ownPlace);
  const rest = beds.filter((bed) => (bed.place ?? null) === null);
  const left = own.length === 0 ? 0 : Math.min(...own.map(({ x }) => x));
  const below = own.length === 0 ? 0 : Math.max(...own.map(({ y, high }) => y + high)) + 2 * pathM;
  const right = Math.max(left + rowM, ...own.map(({ x, wide }) => x + wide));
  return { placed: [...own, ...inRows(rest, { left, right, y: below })], setInRows: rest.length };
}

function ownPlace<B extends DrawnBed>(bed: B): readonly PlacedBed<B>[] {
  const { place } = bed;
  if (place === undefined || place === null) return [];
  const upright = place.turned;
  const [wide, high] = upright ? [bed.width.si, bed.length.si] : [bed.length.si, bed.width.si];
  return [{ bed, x: place.east.si, y: -place.north.si - high, wide, high, upright }];
}

function inRows<B extends DrawnBed>(
  beds: readonly B[],
  sheet: { readonly left: number; readonly right: number; readonly y: number },
): readonly PlacedBed<B>[] {
  const placed: PlacedBed<B>[] = [];
  let { left: x, y } = sheet;
  let rowHigh = 0;
  for (const bed of beds) {
    // The narrow way round, so that a row holds more.
    const upright = bed.length.si > bed.width.si;
    const [wide, high] = upright ? [bed.width.si, bed.length.si] : [bed.length.si, bed.width.si];
    if (x > sheet.left && x + wide > sheet.right + 1e-6) {
      x = sheet.left;
      y += rowHigh + pathM;
      rowHigh = 0;
    }
    placed.push({ bed, x, y, wide, high, upright });
    x += wide + pathM;
    rowHigh = Math.max(rowHigh, high);
  }
  return placed;
}
