import type { Quantity } from "./quantity.ts";

const bases = ["m", "kg", "s", "", "K"] as const;
const raised: Readonly<Record<number, string>> = { 1: "", 2: "²", 3: "³", 4: "⁴" };

function factors(q: Quantity, sign: 1 | -1): string[] {
  return q.dim.flatMap((exponent, place) => {
    const power = exponent * sign;
    if (power <= 0) return [];
    const base = place === 3 ? (q.currency ?? "money") : (bases[place] ?? "");
    return [base + (raised[power] ?? "")];
  });
}

/** The coherent SI unit of any quantity: "m/s", "kg/(m·s²)". */
export function siSymbol(q: Quantity): string {
  const above = factors(q, 1).join("·");
  const below = factors(q, -1);
  if (below.length === 0) return above;
  const under = below.length === 1 ? below[0] : `(${below.join("·")})`;
  return `${above === "" ? "1" : above}/${under}`;
}
