import type { CutPart } from "./cut-part.ts";
import { greatestDivisor } from "./divisor.ts";

/** All costs of a part's plans are multiples of this many grains. */
export function costStep(part: CutPart): number {
  if (part.rests !== null) return 1;
  return part.kinds.map((kind) => kind.cost).reduce(greatestDivisor, 0) || 1;
}
