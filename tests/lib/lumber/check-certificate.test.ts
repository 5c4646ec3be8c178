import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type BoardWorth,
  type Certificate,
  checkCertificate,
  inch,
  money,
  over,
  type PieceValue,
} from "../../../lib/index.ts";
import { inches } from "./make.ts";

// "Cutting stock" of Gilmore and Gomory, Operations Research 9 (1961): the floor is the value of
// their dual programme. The numbers of this file are worked by hand beside each case.

const kind = { section: "2x12", timber: "treated" };

function value(takesIn: number, count: number, dollars: number): PieceValue {
  return { ...kind, takes: inches(takesIn), count, value: money(dollars) };
}

function board(roomIn: number, dollars: number, more: Partial<BoardWorth> = {}): BoardWorth {
  return {
    ...{ ...kind, yard: "North", length: inches(roomIn), room: inches(roomIn), partRoom: null },
    ...{ price: money(dollars), worth: money(dollars), limit: null, rebate: money(0) },
    ...more,
  };
}

// Four pieces of 40 and two of 60 on boards of 100 at 10: 40 is worth 4, 60 worth 6. A board holds
// 40 + 60 = 10, 40 + 40 = 8. All pieces: 16 + 12 = 28.
const sound: Certificate = {
  pieces: [value(40, 4, 4), value(60, 2, 6)],
  boards: [board(100, 10)],
  others: [],
  kerf: inches(0),
  offcuts: null,
  floor: money(28),
};

const places = (certificate: Certificate) =>
  checkCertificate(certificate).map(({ path }) => path.join("."));

describe("checkCertificate", () => {
  it("finds nothing against a floor that holds", () => {
    expect(checkCertificate(sound)).toEqual([]);
    expect(checkCertificate({ ...sound, floor: money(3) })).toEqual([]);
    const nothing = { ...sound, pieces: [], boards: [], floor: money(0) };
    expect(checkCertificate(nothing)).toEqual([]);
  });

  it.each<[string, Partial<Certificate>, string]>([
    ["a floor above the sum", { floor: money(28.01) }, "floor"],
    ["a hundredth of a cent too much", { floor: money(28.0001) }, "floor"],
    [
      "a board that yields more than its price",
      { boards: [board(100, 9.99, { worth: money(10) })] },
      "boards.1.price",
    ],
    [
      "a board worth more than is said",
      { boards: [board(100, 10, { worth: money(9) })] },
      "boards.1.worth",
    ],
    ["a piece valued higher", { pieces: [value(40, 4, 4.01), value(60, 2, 6)] }, "boards.1.price"],
    [
      "a longer board that is not dearer",
      { boards: [board(120, 10, { worth: money(12) })] },
      "boards.1.price",
    ],
    ["a piece worth less than nothing", { pieces: [value(40, 4, -1)] }, "pieces.1.value"],
    [
      "limited boards that save more than is said",
      { boards: [board(100, 0, { yard: null, worth: money(10), limit: 2, rebate: money(19) })] },
      "boards.1.rebate",
    ],
    [
      "a rebate that adds to the floor",
      {
        boards: [board(100, 12, { worth: money(10), limit: 2, rebate: money(-4) })],
        floor: money(32),
      },
      "boards.1.rebate",
    ],
    [
      "a rebate that adds to the floor of boards without limit",
      { boards: [board(100, 10, { rebate: money(-4) })], floor: money(32) },
      "boards.1.rebate",
    ],
    ["another part below zero", { others: [{ what: "a price break", sum: money(-1) }] }, "floor"],
  ])("refuses %s", (_, changed, place) => {
    expect(places({ ...sound, ...changed })).toContain(place);
  });

  it("counts limited boards, other parts, and boards of another kind", () => {
    const kept = board(100, 0, { yard: null, worth: money(10), limit: 2, rebate: money(20) });
    const others = [{ what: "one trip", sum: money(5) }];
    const cedar = board(100, 1, { timber: "cedar", worth: money(0) });
    const all = { ...sound, boards: [board(100, 10), kept, cedar], others, floor: money(13) };
    expect(checkCertificate(all)).toEqual([]);
    expect(places({ ...all, floor: money(13.01) })).toEqual(["floor"]);
  });

  it("counts no piece more often than there is", () => {
    // Two of 40 and one of 30 in 150 are worth 10; three of 40 would be 12.
    const pieces = [value(40, 2, 4), value(30, 1, 2)];
    const ten = { ...sound, pieces, boards: [board(150, 10)], floor: money(10) };
    expect(checkCertificate(ten)).toEqual([]);
    const pieces3 = [value(40, 3, 4), value(30, 1, 2)];
    expect(places({ ...ten, pieces: pieces3 })).toContain("boards.1.price");
  });

  it("lets no piece lie on both parts of a board cut in two", () => {
    // 100 in parts of at most 55: two of 40 (8), not 40 + 60.
    const parted = board(100, 8, { partRoom: inches(55) });
    const pieces = { pieces: [value(40, 4, 4), value(60, 2, 6)] };
    expect(checkCertificate({ ...sound, ...pieces, boards: [parted] })).toEqual([]);
    // Parts of at most 60 hold 40 and 60 after all.
    const wider = board(100, 8, { partRoom: inches(60) });
    expect(places({ ...sound, ...pieces, boards: [wider] })).toContain("boards.1.price");
  });

  it("counts offcuts of bought boards at what they are worth", () => {
    const offcuts = { from: inches(18), worth: over(money(0.1), inch) };
    const withKerf = { ...sound, pieces: [value(40, 4, 4)], kerf: inches(1), offcuts };
    const floor = money(16);
    // Of 100: two of 40 and 19 in worth 1.90 = 9.90; of a board kept only 8.
    const said = (worth: number, more: Partial<BoardWorth> = {}) => ({
      ...{ ...withKerf, floor },
      boards: [board(100, worth, { worth: money(worth), ...more })],
    });
    expect(checkCertificate(said(9.9))).toEqual([]);
    expect(places(said(9.89))).toEqual(["boards.1.worth", "boards.1.price"]);
    expect(checkCertificate(said(8, { yard: null }))).toEqual([]);
    // In parts of 60 and 40, the first filled with 41 + 19 and the second with 40: no more.
    expect(checkCertificate(said(9.9, { partRoom: inches(60) }))).toEqual([]);
    expect(places(said(9.8, { partRoom: inches(60) }))).toContain("boards.1.price");
  });

  it("works out what trying every filling gives", () => {
    const pieces = fc.array(
      fc.record({
        takes: fc.integer({ min: 5, max: 40 }),
        count: fc.integer({ min: 0, max: 3 }),
        worth: fc.integer({ min: 0, max: 20 }),
      }),
      { minLength: 1, maxLength: 4 },
    );
    const best = (
      rest: readonly { takes: number; count: number; worth: number }[],
      room: number,
    ): number => {
      const [first, ...others] = rest;
      if (first === undefined) return 0;
      const most = Math.min(first.count, Math.floor(room / first.takes));
      const each = Array.from({ length: most + 1 }, (_, n) => n);
      return Math.max(...each.map((n) => n * first.worth + best(others, room - n * first.takes)));
    };
    fc.assert(
      fc.property(pieces, fc.integer({ min: 1, max: 120 }), (list, room) => {
        const worth = best(list, room);
        const valued = list.map(({ takes, count, worth: each }) => value(takes, count, each));
        const of = (price: number) =>
          places({ ...sound, pieces: valued, boards: [board(room, price)], floor: money(0) });
        expect(of(worth)).toEqual([]);
        if (worth > 0) expect(of(worth - 0.0001)).toEqual(["boards.1.worth", "boards.1.price"]);
      }),
      { numRuns: 200 },
    );
  });

  it("is quick where lengths have no common measure", () => {
    const pieces = Array.from({ length: 60 }, (_, i) => value(20 + i * 1.0007, 10, 1 + i / 20));
    const boards = [board(240, 1000, { worth: money(1000) })];
    expect(checkCertificate({ ...sound, pieces, boards, floor: money(0) })).toEqual([]);
  });
});
