import { grainsPerMinor } from "../cutting/cut-part.ts";
import { minorDigits } from "../measure/index.ts";
import type { BoardProblem, StockBoard } from "./board-problem.ts";
import { currencyOf, type Offer } from "./make-groups.ts";

/** How boards of a yard come to the garden. */
export interface Carriage {
  /** Whether any can be had at all. */
  readonly open: boolean;
  /** Whether the car fetches them, so that its load length counts. */
  readonly byCar: boolean;
  /** The price of one is multiplied by this, for the tax on it. */
  readonly taxed: number;
}

const hairM = 1e-9;

/** A board in the car: whole, in two parts of a length, or not at all. */
function loaded(problem: BoardProblem, board: StockBoard): { partM: number | null } | undefined {
  const { loadLength, cutAtYard = false } = problem;
  if (loadLength === undefined || board.length.si <= loadLength.si + hairM) return { partM: null };
  return cutAtYard ? { partM: loadLength.si } : undefined;
}

/** The boards that can be used, with what each costs: those of the yards as they are fetched, and the kept ones. */
export function offersOf(
  problem: BoardProblem,
  carriage: (yard: string) => Carriage,
): readonly Offer[] {
  const minor = 10 ** minorDigits(currencyOf(problem));
  return problem.stock.flatMap((board, row): Offer[] => {
    if (board.yard === null) return [{ row, grains: 0, partM: null }];
    const { open, byCar, taxed } = carriage(board.yard);
    if (!open) return [];
    const inCar = byCar ? loaded(problem, board) : { partM: null };
    if (!inCar) return [];
    const grains = Math.round(board.price.si * minor * taxed * grainsPerMinor);
    return [{ row, grains, ...inCar }];
  });
}

/** All yards open, no tax: as boards are planned by themselves. */
export const plainCarriage = (): Carriage => ({ open: true, byCar: true, taxed: 1 });
