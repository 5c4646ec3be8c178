import { foot, gallon, over, squareFoot, times } from "../../../lib/index.ts";
import {
  choice,
  count,
  density,
  label,
  length,
  number,
  quantityOf,
  type Sizes,
  yesNo,
} from "./leaves.ts";
import { but, list, record, variant } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const left: Sizes = { zero: "fine", optional: true };
const optional: Sizes = { optional: true };

const screw = (size: string, diameter: string) =>
  record({ length: length(size), diameter: length(diameter), gauge: label("10") });
const stock = list([screw("2 1/2 in", "3/16 in"), screw("3 in", "3/16 in")], { empty: "missing" });
const board = length("1 1/2 in");
const wood = number(0.5);
const fastener = choice("nail");
const retention = (text: string) =>
  but(density(text, { optional: true }), variant("null", null, "fine"));

export const fastenerCases: FolderCases = {
  boardScrews: {
    takes: {
      joint: record({ board, into: length("3 1/2 in") }),
      options: record({
        stock,
        grain: choice("side", { optional: true }),
        load: choice("withdrawal", { optional: true }),
        clearance: length("1/4 in", left),
        diameters: number(6, optional),
      }),
    },
  },
  cornerPlates: {
    takes: {
      frame: record({ courses: count(2) }),
      options: record(
        {
          frames: count(3, left),
          perCorner: count(2, optional),
          holes: count(8, optional),
          corners: count(4, optional),
        },
        { optional: true },
      ),
    },
  },
  endCutPreservative: {
    takes: {
      sawn: list(
        [
          record({
            section: record({ thickness: board, width: length("11 1/4 in") }),
            ends: count(12, { zero: "fine" }),
          }),
        ],
        { empty: "fine" },
      ),
      options: record(
        {
          coverage: quantityOf(over(times(100, squareFoot), gallon), optional),
          coats: number(2, optional),
        },
        { optional: true },
      ),
    },
  },
  fastenerMetal: {
    takes: {
      options: record({ treated: yesNo(true), place: choice("in soil", { optional: true }) }),
    },
  },
  groundContactStamp: {
    takes: {
      options: record(
        {
          preservative: record(
            {
              preservative: label("copper azole"),
              aboveGround: retention("0.06 lb/ft3"),
              groundContact: retention("0.15 lb/ft3"),
              heavyDuty: retention("0.31 lb/ft3"),
            },
            { optional: true },
          ),
          heavy: yesNo(true, { optional: true }),
        },
        { optional: true },
      ),
    },
  },
  penetration: {
    takes: {
      joint: record({
        fastener,
        length: length("3 in"),
        diameter: length("3/16 in"),
        through: length("1 1/2 in", { zero: "fine" }),
      }),
    },
  },
  pilotHole: {
    takes: { root: length("1/8 in"), options: record({ specificGravity: wood }) },
  },
  plateScrews: {
    takes: {
      joint: record({ plate: length("1/16 in"), board }),
      options: record({ stock, clearance: length("1/8 in", left) }),
    },
  },
  screwsAcross: {
    takes: {
      width: length("11 1/4 in"),
      options: record({ joints: count(4, left) }, { optional: true }),
    },
    together: [
      {
        what: "a width of one foot and more",
        with: { width: times(2, foot) },
        outcome: "too-large",
        at: ["width"],
      },
    ],
  },
  withdrawal: {
    takes: {
      options: record({
        fastener,
        specificGravity: wood,
        diameter: length("3/16 in"),
        grain: choice("end", { optional: true }),
      }),
    },
  },
};
