import { describe, expect, it } from "vitest";
import { cuttingRows, planBoards } from "../../../lib/index.ts";
import { board, inches, piece } from "./make.ts";
import { boardProblem, solver } from "./solver.ts";

describe("rows of the cutting sheet", () => {
  it("name boards cut alike once, with each cut and what is left over", async () => {
    const problem = boardProblem([piece(45, 4, { name: "end" })], [board(96, 20)]);
    const plan = await planBoards(problem, { solve: await solver() });
    expect(cuttingRows(plan).map((row) => [row.boards, row.cut, row.for])).toEqual([
      ["B1–B2", "", "2 of 8 ft, 2x12, North"],
      ["", 1, "end (2)"],
      ["", 2, "end (2)"],
      ["", "", "left over"],
    ]);
  });

  it("say how a tape is held that is not at the board's end (common practice)", async () => {
    const problem = boardProblem(
      [piece(95, 2), piece(40, 1, { mitred: true })],
      [board(192, 40), board(48, 9)],
      {
        loadLength: inches(108),
        cutAtYard: true,
        squaring: inches(0.5),
      },
    );
    const plan = await planBoards(problem, { solve: await solver() });
    const said = cuttingRows(plan).map((row) => row.for);
    expect(said.filter((text) => text.startsWith("cut in two at the yard"))).toHaveLength(1);
    expect(said.filter((text) => text.startsWith("square the end"))).toHaveLength(2);
    expect(said.join()).toContain("tape at the yard's cut");
    expect(said.join()).toContain("long point to long point from the cut before");
  });
});
