import { describe, expect, it } from "vitest";
import { amount, inch, planBoards, stopLengths } from "../../../lib/index.ts";
import { board, piece, section } from "./make.ts";
import { boardProblem, solver } from "./solver.ts";

// Counted by hand; one stop for all pieces of a length is common practice.
describe("stopLengths", () => {
  it("gives each length sawn more than once, by section, the longest first", async () => {
    const narrow = section("2x6");
    const plan = await planBoards(
      boardProblem(
        [
          piece(20, 3),
          piece(45, 2),
          piece(33, 1),
          piece(18, 2, { section: narrow, name: "cap", bed: "B" }),
        ],
        [board(96, 20), board(96, 9, { section: narrow })],
      ),
      { solve: await solver() },
    );
    expect(
      stopLengths(plan).map((row) => [row.section, amount(row.stop, inch), row.count, row.beds]),
    ).toEqual([
      ["2x12", expect.closeTo(45, 6), 2, "list (2)"],
      ["2x12", expect.closeTo(20, 6), 3, "list (3)"],
      ["2x6", expect.closeTo(18, 6), 2, "B (2)"],
    ]);
  });
});
