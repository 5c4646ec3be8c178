import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amount,
  type BoardPlan,
  cuttingSheet,
  inch,
  type Length,
  planBoards,
  stopLengths,
} from "../../../lib/index.ts";
import { board, inches, kept, piece } from "./make.ts";
import { boardProblem, solver } from "./solver.ts";

const inInches = (length: Length | null) => (length === null ? null : amount(length, inch));

async function planned(problem: ReturnType<typeof boardProblem>): Promise<BoardPlan> {
  return planBoards(problem, { solve: await solver() });
}

const onlySheet = (plan: BoardPlan) => {
  const sheets = cuttingSheet(plan);
  expect(sheets).toHaveLength(1);
  return sheets as [(typeof sheets)[number]];
};

// Worked by hand; that a kerf is lost beside every mark is common practice.
describe("the marks on one tape (common practice)", () => {
  it("counts the kerf of every cut before", async () => {
    // 8 ft board, three pieces of 30 in, kerf 1/8 in: 30, 30 + 1/8 + 30, and 30 + 1/8 + 30 + 1/8 + 30.
    const plan = await planned(boardProblem([piece(30, 3)], [board(96, 20)]));
    const [sheet] = onlySheet(plan);
    expect(sheet.steps.map(({ mark }) => inInches(mark))).toEqual([
      expect.closeTo(30, 6),
      expect.closeTo(60.125, 6),
      expect.closeTo(90.25, 6),
    ]);
    expect(sheet.steps.map(({ cut }) => cut)).toEqual([1, 2, 3]);
    // 96 - 3 x 30 - 3 x 1/8
    expect(inInches(sheet.offcut)).toBeCloseTo(5.625, 6);
  });

  it("squares the end first and holds the tape there", async () => {
    // 1/2 in is sawn off, then 95 1/2 in are left: 45 in, and 45 + 1/8 + 45 = 90 1/8 in.
    const plan = await planned(
      boardProblem([piece(45, 2)], [board(96, 20)], { squaring: inches(0.5) }),
    );
    const [sheet] = onlySheet(plan);
    expect(sheet.steps.map(({ kind, from, mark }) => [kind, from, inInches(mark)])).toEqual([
      ["squaring", "board's end", expect.closeTo(0.5, 6)],
      ["piece", "squared end", expect.closeTo(45, 6)],
      ["piece", "squared end", expect.closeTo(90.125, 6)],
    ]);
  });

  it("has the yard cut a board that is too long for the car, and measures its second part anew", async () => {
    // 16 ft board, car 9 ft: both 8 ft less 1/16 in pieces use it up, with the yard's cut between.
    const plan = await planned(
      boardProblem([piece(95.9375, 2)], [board(192, 40)], {
        loadLength: inches(108),
        cutAtYard: true,
      }),
    );
    const [sheet] = onlySheet(plan);
    const [yard, ...rest] = sheet.steps;
    expect(yard).toMatchObject({ kind: "at the yard", cut: 1, from: "board's end" });
    expect(rest.map(({ from }) => from)).toEqual(["board's end", "yard's cut"]);
    expect(sheet.firstOffcut).not.toBeNull();
    // One cut parts two pieces that use the board up.
    expect(rest.filter(({ cut }) => cut !== null).length).toBe(sheet.cutCount - 1);
  });

  it("saws nothing where a piece is the whole board", async () => {
    const plan = await planned(boardProblem([piece(96, 2)], [board(96, 20)]));
    const [sheet] = onlySheet(plan);
    expect(sheet.count).toBe(2);
    expect(sheet.steps).toMatchObject([{ kind: "piece", cut: null }]);
    expect(stopLengths(plan)).toEqual([]);
  });

  it("measures mitred pieces from the cut before, after one cut that mitres the end", async () => {
    const mitred = piece(40, 2, { mitred: true, part: "cap-side" });
    const plan = await planned(boardProblem([mitred], [board(96, 20)]));
    const [sheet] = onlySheet(plan);
    expect(sheet.steps.map(({ kind, mark, from }) => [kind, inInches(mark), from])).toEqual([
      ["mitre", 0, "board's end"],
      ["piece", null, "cut before"],
      ["piece", null, "cut before"],
    ]);
    expect(stopLengths(plan)).toMatchObject([{ ends: "mitred", count: 2 }]);
  });
});

describe("boards cut alike", () => {
  it("stand together whatever beds their pieces go to, kept ones first", async () => {
    const pieces = ["A", "B", "C"].flatMap((bed) => [piece(45, 2, { bed, name: `${bed} end` })]);
    const plan = await planned(boardProblem(pieces, [board(96, 20), kept(92)]));
    const sheets = cuttingSheet(plan);
    expect(sheets.map(({ boards, count, source }) => [boards, count, source])).toEqual([
      ["K1", 1, "kept"],
      ["B1–B2", 2, "North"],
    ]);
    const beds = sheets.flatMap(({ steps }) => steps.flatMap((step) => step.beds));
    expect(beds.sort()).toEqual(["A", "A", "B", "B", "C", "C"]);
  });
});

describe("on any plan", () => {
  it("marks, pieces and saw cuts add up to the board, and every piece is on the sheet", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.record({
          lengths: fc.array(
            fc.tuple(fc.integer({ min: 40, max: 700 }), fc.integer({ min: 1, max: 4 })),
            {
              minLength: 1,
              maxLength: 5,
            },
          ),
          kerf: fc.integer({ min: 0, max: 8 }),
          squaring: fc.constantFrom(0, 8, 16),
          car: fc.constantFrom(undefined, 120),
        }),
        async ({ lengths, kerf, squaring, car }) => {
          const kerfIn = kerf / 32;
          const pieces = lengths.map(([eighths, count], at) =>
            piece(eighths / 8, count, { name: `p${at}`, bed: `bed ${at}` }),
          );
          const plan = await planned(
            boardProblem(pieces, [board(96, 20), board(144, 31), kept(61)], {
              kerf: inches(kerfIn),
              ...(squaring === 0 ? {} : { squaring: inches(squaring / 16) }),
              ...(car === undefined ? {} : { loadLength: inches(car), cutAtYard: true }),
            }),
          );
          const sheets = cuttingSheet(plan);
          const labels = sheets.flatMap((sheet) => sheet.labels).sort();
          expect(labels).toEqual(plan.cuts.map((cut) => cut.board).sort());
          const named = sheets.flatMap(({ steps }) => steps.flatMap((step) => step.names));
          expect(named).toHaveLength(plan.cuts.flatMap((cut) => cut.pieces).length);
          for (const sheet of sheets) {
            const { steps, cutCount, length, offcut, firstOffcut } = sheet;
            expect(steps.filter(({ cut }) => cut !== null)).toHaveLength(cutCount);
            let usedIn = 0;
            let tapeIn = 0;
            let tapeAt = "";
            for (const { kind, from, mark, piece: off, cut } of steps) {
              if (kind === "squaring") usedIn += inInches(mark) ?? 0;
              if (kind !== "piece") continue;
              if (from !== tapeAt) tapeIn = 0;
              tapeAt = from;
              tapeIn += inInches(off) ?? 0;
              usedIn += (inInches(off) ?? 0) + (cut === null ? 0 : kerfIn);
              expect(inInches(mark)).toBeCloseTo(tapeIn, 3);
              tapeIn += kerfIn;
            }
            const leftIn = (inInches(offcut) ?? 0) + (inInches(firstOffcut) ?? 0);
            const yardIn = firstOffcut === null ? 0 : kerfIn;
            // A last cut may fall partly beyond the board's end, and eats no more than is there.
            const sumIn = usedIn + leftIn + yardIn;
            const boardIn = inInches(length) ?? 0;
            expect(sumIn).toBeGreaterThan(boardIn - 1e-3);
            expect(sumIn).toBeLessThan(boardIn + 2 * kerfIn + 1e-3);
          }
        },
      ),
      { numRuns: 60, seed: 20 },
    );
  }, 60_000);
});
