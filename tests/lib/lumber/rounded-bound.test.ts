// Problems whose optimum lies one above the rounded-up value of the relaxation (derived). In each,
// boards are used up only by pieces of one kind, and what may be wasted in all is less than any mixed
// board wastes. A planner that took the rounded bound for a proof would be wrong here, or would never
// prove the plan it has.
import { describe, expect, it } from "vitest";
import { type CuttingStock, cutExample } from "../../published/cutting-stock.ts";

interface Gapped {
  readonly example: CuttingStock;
  /** Where a board may hold more of a kind than there are. */
  readonly relaxation: number;
  readonly least: number;
}

const gapped: readonly (readonly [string, Gapped])[] = [
  [
    "30 long: 15 x 1, 10 x 2, 6 x 4",
    {
      example: {
        stock: [[30, 1]],
        pieces: [
          [15, 1],
          [10, 2],
          [6, 4],
        ],
      },
      relaxation: 59 / 30,
      least: 3,
    },
  ],
  [
    "132 long: 44 x 2, 33 x 3, 12 x 6",
    {
      example: {
        stock: [[132, 1]],
        pieces: [
          [44, 2],
          [33, 3],
          [12, 6],
        ],
      },
      relaxation: 259 / 132,
      least: 3,
    },
  ],
];

// The same with a full board of each kind more, so that no board holds more of a kind than there are.
const fullBoardsMore: readonly (readonly [string, Gapped])[] = [
  [
    "30 long: 15 x 3, 10 x 5, 6 x 9",
    {
      example: {
        stock: [[30, 1]],
        pieces: [
          [15, 3],
          [10, 5],
          [6, 9],
        ],
      },
      relaxation: 149 / 30,
      least: 6,
    },
  ],
  [
    "132 long: 44 x 5, 33 x 7, 12 x 17",
    {
      example: {
        stock: [[132, 1]],
        pieces: [
          [44, 5],
          [33, 7],
          [12, 17],
        ],
      },
      relaxation: 655 / 132,
      least: 6,
    },
  ],
];

/** Whether the pieces go into so many boards, by trying every board for every piece. */
function fits({ stock, pieces }: CuttingStock, count: number): boolean {
  const lengths = pieces.flatMap(([length, of]) => Array.from({ length: of }, () => length));
  const [[room] = [0]] = stock;
  const failed = new Set<string>();
  const place = (at: number, left: readonly number[]): boolean => {
    const length = lengths[at];
    if (length === undefined) return true;
    const key = `${at}:${left.join(" ")}`;
    if (failed.has(key)) return false;
    failed.add(key);
    return left.some(
      (rest, board) =>
        rest >= length &&
        place(
          at + 1,
          left.with(board, rest - length).toSorted((a, b) => a - b),
        ),
    );
  };
  return place(
    0,
    Array.from({ length: count }, () => room),
  );
}

describe("the least number of boards, one above the rounded bound", () => {
  it.each([...gapped, ...fullBoardsMore])(
    "%s (derived)",
    async (_, { example, relaxation, least }) => {
      expect(Math.ceil(relaxation)).toBe(least - 1);
      expect([fits(example, least - 1), fits(example, least)]).toEqual([false, true]);
      const plan = await cutExample(example);
      expect(plan.boughtCount).toBe(least);
      expect(plan.cost.si).toBe(least);
      expect(plan.proof).toEqual({ kind: "optimal" });
    },
  );

  it.each(fullBoardsMore)(
    "of %s: no values of pieces prove more than the relaxation (derived)",
    async (_, { example, relaxation }) => {
      const { certificate } = await cutExample(example);
      // To 1/100,000 of a cent a board.
      expect(Math.abs(certificate.floor.si - relaxation)).toBeLessThan(1e-5);
    },
  );
});
