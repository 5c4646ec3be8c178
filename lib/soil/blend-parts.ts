import type { Given } from "../measure/given.ts";
import { partLimits } from "./limits.ts";

type Path = readonly (string | number)[];

/** The parts of a blend, checked: each one's share, and what `read` finds in its material. */
export function blendParts<T>(
  given: Given,
  parts: unknown,
  read: (material: unknown, path: Path) => T,
): readonly (T & { readonly share: number })[] {
  return given.list(parts, ["parts"], 1).map((part, at) => {
    const path = ["parts", at + 1];
    const found = given.fields(part, path);
    return {
      share: given.plain(found.share, [...path, "share"], partLimits),
      ...read(found.material, [...path, "material"]),
    };
  });
}

/** A figure of the whole by the parts' shares of the loose volume. */
export function meanOf<T extends { readonly share: number }>(
  rows: readonly T[],
  figure: (row: T) => number,
): number {
  const total = rows.reduce((sum, row) => sum + row.share, 0);
  return rows.reduce((sum, row) => sum + figure(row) * row.share, 0) / total;
}
