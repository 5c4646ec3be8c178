import { grainsPerMinor } from "../cutting/cut-part.ts";
import { type Money, minorDigits, quantity } from "../measure/index.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { BoardWorth, Certificate, FloorPart, PieceValue } from "./certificate.ts";
import { type CuttingGroup, currencyOf } from "./make-groups.ts";
import { unitsToLength } from "./whole-units.ts";

/** What pieces and boards of one group are worth, in grains. */
export interface GroupWorth {
  readonly group: CuttingGroup;
  readonly values: readonly number[];
  readonly prices: readonly number[];
  readonly fillings: readonly number[];
}

const moneyDimension = [0, 0, 0, 1, 0] as const;

/** Sums from grains, in the currency of the prices. */
export function grainsToMoney(currency: string | undefined): (grains: number) => Money {
  const perUnit = grainsPerMinor * 10 ** minorDigits(currency);
  return (grains) => quantity(grains / perUnit, moneyDimension, currency);
}

/** The certificate of a floor, from the values it rests on. */
export function certify(
  problem: BoardProblem,
  groups: readonly GroupWorth[],
  others: readonly { readonly what: string; readonly grains: number }[],
): Certificate {
  const money = grainsToMoney(currencyOf(problem));
  const pieces: PieceValue[] = [];
  const boards: BoardWorth[] = [];
  let floor = others.reduce((sum, each) => sum + each.grains, 0);
  for (const { group, values, prices, fillings } of groups) {
    const { timber } = group;
    const section = group.section.name;
    const demand = group.classes.reduce((sum, each) => sum + each.demand, 0);
    for (const [i, { leastU, demand: count }] of group.classes.entries()) {
      const value = values[i] ?? 0;
      floor += value * count;
      pieces.push({ section, timber, takes: unitsToLength(leastU), count, value: money(value) });
    }
    for (const [k, kind] of group.kinds.entries()) {
      const stock = problem.stock[kind.stock[0] ?? 0];
      const [price, worth] = [prices[k] ?? 0, fillings[k] ?? 0];
      const over = Math.max(0, worth - price);
      // Every board used carries a piece: there are never more of them than pieces.
      const most = Math.min(kind.supply, Math.max(demand, kind.least));
      const limit = Number.isFinite(kind.supply) || over > 0 ? most : null;
      const rebate = over * most;
      floor -= rebate;
      if (!stock) continue;
      boards.push({
        ...{ yard: stock.yard, section, timber, length: stock.length },
        room: unitsToLength(kind.capacityU),
        partRoom: kind.partsU === null ? null : unitsToLength(Math.max(...kind.partsU)),
        ...{ price: money(price), worth: money(worth), limit, rebate: money(rebate) },
      });
    }
  }
  const kerf = problem.kerf;
  const offcuts = problem.offcuts ?? null;
  const parts: FloorPart[] = others.map(({ what, grains }) => ({ what, sum: money(grains) }));
  return { pieces, boards, others: parts, kerf, offcuts, floor: money(floor) };
}
