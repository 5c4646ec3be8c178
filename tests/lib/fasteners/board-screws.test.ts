import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { boardScrews, foot, pound } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";
import { inches, screw } from "./stock.ts";

const two = inches(1.5);
const stock = [screw(2.5, 0.164), screw(2.5), screw(3), screw(3.5), screw(3, 0.216)];

describe("boardScrews", () => {
  it("takes the thickest that holds and hides its point, in its shortest length", () => {
    // Board 1.5 in and stake 3.5 in: at most 4.75 in; number 12 needs 1.5 + 6 x 0.216 = 2.796 in.
    expect(boardScrews({ board: two, into: inches(3.5) }, { stock }).screw).toBe(stock[4]);
    // Number 10 needs 2.64 in: of 2-1/2, 3 and 3-1/2 in the 3 in screw.
    expect(boardScrews({ board: two, into: inches(3.5) }, { stock: stock.slice(0, 4) }).screw).toBe(
      stock[2],
    );
    // A stake of 1-1/2 in leaves 2-3/4 in: only number 8 (2.484 in) does both.
    expect(boardScrews({ board: two, into: two }, { stock }).screw).toBe(stock[0]);
  });

  it("says so where nothing does both, and offers a thicker stake or a bolt", () => {
    const choice = boardScrews({ board: two, into: two }, { stock: [screw(2.5), screw(3)] });
    expect(choice.screw).toBeNull();
    expect(choice.reason).toMatch(/No screw in stock/);
    expect(choice.offers.map(({ kind }) => kind)).toEqual(["thicker", "bolt"]);
    // 3 in screw + 1/4 in - 1-1/2 in board = 1-3/4 in.
    expect(choice.offers[0]?.size?.si).toBeCloseTo(inches(1.75).si, 12);
  });

  it("offers a stake that then does take a screw", () => {
    const thin = fc.double({ min: 0.5, max: 3, noNaN: true });
    fc.assert(
      fc.property(thin, thin, (boardIn, intoIn) => {
        const joint = { board: inches(boardIn), into: inches(intoIn) };
        const thicker = boardScrews(joint, { stock }).offers.find(({ kind }) => kind === "thicker");
        fc.pre(thicker?.size !== undefined);
        const into = thicker?.size ?? two;
        expect(into.si).toBeGreaterThan(joint.into.si);
        expect(boardScrews({ ...joint, into }, { stock }).screw).not.toBeNull();
      }),
    );
  });

  it("keeps within its bounds whatever the joint", () => {
    const size = fc.double({ min: 0.5, max: 6, noNaN: true });
    fc.assert(
      fc.property(size, size, (boardIn, intoIn) => {
        const {
          screw: taken,
          least,
          most,
        } = boardScrews({ board: inches(boardIn), into: inches(intoIn) }, { stock });
        if (taken === null) return;
        expect(taken.length.si).toBeGreaterThanOrEqual((least?.si ?? 0) - 1e-9);
        expect(taken.length.si).toBeLessThanOrEqual(most.si + 1e-9);
      }),
    );
  });

  it("never loads end grain in withdrawal, whatever is in stock", () => {
    const end = { stock, grain: "end", load: "withdrawal" } as const;
    const choice = boardScrews({ board: two, into: foot }, end);
    expect(choice.screw).toBeNull();
    expect(choice.offers.map(({ kind }) => kind)).toEqual(["side-grain", "plate"]);
    expect(boardScrews({ board: two, into: foot }, { stock, grain: "end" }).screw).not.toBeNull();
  });

  it("takes zero clearance as zero", () => {
    const joint = { board: two, into: two };
    expect(boardScrews(joint, { stock: [screw(3)] }).screw).toBeNull();
    expect(boardScrews(joint, { stock: [screw(3)], clearance: inches(0) }).screw).not.toBeNull();
  });

  it("refuses what is no joint, all at once", () => {
    expect(refusals(() => boardScrews(wrong(null), { stock }))).toEqual(["missing joint"]);
    expect(refusals(() => boardScrews({ board: two, into: two }, { stock: [] }))).toEqual([
      "missing stock",
    ]);
    expect(
      refusals(() =>
        boardScrews(
          { board: wrong(1.5), into: wrong(pound) },
          {
            stock,
            grain: wrong("cross"),
            load: wrong("pull"),
            clearance: inches(3),
            diameters: 0,
          },
        ),
      ),
    ).toEqual([
      "wrong-unit board",
      "wrong-unit into",
      "too-large clearance",
      "too-small diameters",
      "unknown grain",
      "unknown load",
    ]);
  });
});
