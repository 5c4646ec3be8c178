import type { BedShare, Bought } from "../cost/index.ts";
import type { BoardPlan, BuyLine, CutBoard } from "../lumber/index.ts";
import { type Density, massDimension, quantity } from "../measure/index.ts";
import { kindOf } from "./board-kind.ts";

/** Boards on a receipt, with the yard they are bought at. */
export interface BoughtBoards extends Bought {
  readonly yard: string;
}

const offerOf = (board: BuyLine | CutBoard): string => `${board.yard} ${kindOf(board)}`;

/** The boards of a plan as lines of receipts, each board's price shared by the beds whose pieces it gives. */
export function boardLines(plan: BoardPlan, woodDensity: Density | undefined): BoughtBoards[] {
  const sharesOf = boardShares(plan);
  return plan.buy.map(
    (buy): BoughtBoards => ({
      yard: buy.yard,
      item: buy.timber === "" ? buy.section.name : `${buy.section.name} ${buy.timber}`,
      use: "boards",
      size: buy.length,
      form: "board",
      board: { section: buy.section.name, timber: buy.timber },
      count: buy.count,
      price: buy.price,
      ...massOf(buy, woodDensity),
      shares: sharesOf.get(offerOf(buy)) ?? [],
    }),
  );
}

/** How much of each kind of board bought goes to which bed, by length of the pieces. */
function boardShares(plan: BoardPlan): ReadonlyMap<string, readonly BedShare[]> {
  const byKind = new Map<string, Map<string, number>>();
  for (const cut of plan.cuts) {
    if (cut.yard === null) continue;
    const key = offerOf(cut);
    const beds = byKind.get(key) ?? new Map<string, number>();
    byKind.set(key, beds);
    const usedM = cut.pieces.reduce((sum, piece) => sum + piece.length.si, 0);
    // A whole board counts once, however much of it becomes offcut.
    for (const piece of cut.pieces) {
      beds.set(piece.bed, (beds.get(piece.bed) ?? 0) + piece.length.si / usedM);
    }
  }
  return new Map(
    [...byKind].map(([key, beds]) => [key, [...beds].map(([bed, share]) => ({ bed, share }))]),
  );
}

function massOf(buy: BuyLine, density: Density | undefined) {
  if (density === undefined) return {};
  const { section, length, count } = buy;
  const kg = section.thickness.si * section.width.si * length.si * density.si * count;
  return { mass: quantity(kg, massDimension) };
}
