import { type Caution, requireRecords } from "../check/index.ts";
import { fields, requireShape } from "../measure/shape.ts";
import { cautions } from "./shapes.ts";

/**
 * All cautions of several results, each kind once, with all that called for it.
 *
 * @param results lists of cautions, or results that carry them; what has none adds nothing
 * @rule equal ids are one caution; what called for them is joined
 * @source common practice
 * @example
 * gardenCautions([[neverBurn({ because: "A" })], [neverBurn({ because: "B" })]])[0].because // => "A; B"
 */
export function gardenCautions(
  results: readonly (readonly Caution[] | { readonly cautions: readonly Caution[] })[],
): readonly Caution[] {
  const byId = new Map<string, { readonly caution: Caution; readonly because: Set<string> }>();
  requireResults(results);
  for (const result of results) {
    for (const caution of "cautions" in result ? result.cautions : result) {
      const known = byId.get(caution.id) ?? { caution, because: new Set<string>() };
      byId.set(caution.id, known);
      if (caution.because !== undefined) known.because.add(caution.because);
    }
  }
  return [...byId.values()].map(({ caution, because }) => {
    const { because: _own, ...rest } = caution;
    return because.size === 0 ? rest : { ...rest, because: [...because].join("; ") };
  });
}

function requireResults(results: unknown): void {
  if (!Array.isArray(results)) requireRecords(results, ["results"]);
  for (const [at, result] of (results as readonly unknown[]).entries()) {
    const place = ["results", at + 1];
    requireShape(result, Array.isArray(result) ? cautions : fields({ cautions }), place);
  }
}
