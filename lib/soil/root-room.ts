import { Given } from "../measure/given.ts";
import type { Length } from "../measure/index.ts";
import { depthLimits, someDepth } from "./limits.ts";

/** How deep a crop roots: a row of the table of root depths. */
export interface RootDepth {
  readonly crop: string;
  /** Greatest effective rooting depth, 1 mm to 20 ft. */
  readonly depth: Length;
  readonly source: string;
}

/** How a bed suits a crop's roots. */
export interface RootRoom {
  readonly crop: string;
  /** How much of its rooting depth the bed holds, 0 to 1. */
  readonly share: number;
  /** `all` of its roots, `most`, or `part`: then they go into the ground below, or stay short. */
  readonly room: "all" | "most" | "part";
  readonly depth: Length;
}

/**
 * Which crops find room for their roots in a bed, the shallowest first. The published depths are how
 * far roots reach in deep soil without an obstacle: a bed that is open below gives more than its own
 * depth, one on a hard floor does not.
 *
 * @param depth of the soil, 0 to 20 ft.
 * @param crops rows: `crop`, `depth`, 1 mm to 20 ft, `source`.
 * @throws ProblemError where a field is missing, of another kind or out of range.
 * @rule share = soil depth / rooting depth, at most 1; most from two thirds
 * @source fao-56
 * @example
 * const lettuce = { crop: "lettuce", depth: times(16, inch), source: "fao-56" };
 * rootRoom(times(12, inch), [lettuce])[0].room // => "most"
 */
export function rootRoom(depth: Length, crops: readonly RootDepth[]): readonly RootRoom[] {
  const given = new Given();
  const depthM = given.si(depth, "length", ["depth"], depthLimits);
  const rows = given.list(crops, ["crops"]).map((crop, at) => {
    const path = ["crops", at + 1];
    const row = given.fields(crop, path);
    return {
      crop: given.name(row.crop, [...path, "crop"]),
      rootM: given.si(row.depth, "length", [...path, "depth"], someDepth),
      at,
    };
  });
  given.done();
  return rows
    .sort((a, b) => a.rootM - b.rootM)
    .flatMap(({ crop, rootM, at }) => {
      const found = crops[at];
      const share = Math.min(1, depthM / rootM);
      // A hair under, so that lengths which came by adding up are not judged by their last digit.
      const room = share >= 1 - 1e-9 ? "all" : share >= 2 / 3 - 1e-9 ? "most" : "part";
      return found ? [{ crop, share, room, depth: found.depth }] : [];
    });
}
