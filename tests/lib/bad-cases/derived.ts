import {
  cubicFoot,
  gardenBill,
  gardenFasteners,
  gardenFill,
  gardenPieces,
  inch,
  kilogramPerCubicMetre,
  oldTreatedWood,
  planGardenBuying,
  readSection,
  times,
  toBed,
} from "../../../lib/index.ts";
import { american, choices, feet, material, screws, tables } from "../garden/garden.ts";
import { solver } from "../lumber/solver.ts";
import { fixed, number } from "./leaves.ts";
import { made } from "./made.ts";
import { but, type Part, record, variant } from "./shape.ts";
import { lookedAhead, rottingMaterial, soilLayers } from "./soil.ts";
import type { Cases, FolderCases } from "./walk.ts";

const read = tables(american);
const section = readSection("2x12", { path: [] });
if (!section.ok) throw new Error("no section");
const bed = toBed({
  bed: "A",
  length: feet(8),
  width: feet(4),
  section: section.value,
  timber: "treated",
  stakes: 1,
  built: { year: 2001 },
  east: feet(1),
  north: feet(2),
});
const { pieces } = gardenPieces([bed], { prices: read.prices.rows });
const solve = await solver();
const fill = gardenFill([bed], [{ material: material("topsoil"), share: 1, item: "topsoil" }]);
const fasteners = gardenFasteners([bed], pieces, { screws, prices: read.prices.rows });
const needs = [...fill.needs, ...fasteners.needs];
const { prices, yards } = read;
const need = { pieces, needs, onHand: read.onHand, yards, prices };
const buying = await planGardenBuying(need, { solve });
const bill = gardenBill(buying, [bed]);
const plan = buying.buying.boards;

const shelf = { piece: "shelf", section: section.value, length: feet(3), count: 2 };
const spread = { depth: inch, item: "as priced" };
const everyChoice = {
  ...choices(),
  topDressing: { material: material("compost"), ...spread, heap: cubicFoot },
  mulch: { material: material("pine bark"), ...spread },
  liner: {
    ...{ roll: { width: feet(6), length: feet(100) }, stapleSpacing: feet(1), floor: "mesh" },
    ...{ item: "liner", stapleItem: "staples", floorItem: "mesh", prices: prices.rows },
    ...{ overTop: inch, underEdge: inch, lap: feet(1), cutAlong: true },
  },
  fastening: {
    ...{ screws, prices: prices.rows, plateThickness: times(0.125, inch), platesPerCorner: 2 },
    ...{ holes: 8, seatSpacing: feet(1), plateItem: "plate", preservativeItem: "preservative" },
  },
  woodDensity: times(600, kilogramPerCubicMetre),
};
const beds = made([bed]);
const of = (takes: Readonly<Record<string, Part>>): Cases => ({
  takes,
  derived: "of what readers and other functions of the garden made",
});

/** What functions of a garden do with results of other functions that are broken somewhere. */
export const derivedCases: FolderCases = {
  // The other of its two: a share to hold instead of a depth.
  upkeepDressing: {
    takes: {
      layers: soilLayers,
      options: record({
        ...lookedAhead,
        material: rottingMaterial,
        organic: but(
          number(0.1, { zero: "fine", optional: true }),
          variant("nothing", undefined, "contradiction"),
        ),
      }),
    },
  },
  billRows: of({ bill: made(bill) }),
  boardsToBuy: of({ bill: made(bill) }),
  compareGardenBuying: of({ need: made(need), options: fixed({ solve }) }),
  cutRows: of({ plan: made(plan) }),
  gardenBeds: of({ reading: made(read.beds), chosen: fixed({}), prices: made(prices.rows) }),
  gardenBill: of({ buying: made(buying), beds }),
  gardenCautions: of({ results: made([{ cautions: [oldTreatedWood({ because: "A" })] }]) }),
  gardenChoices: of({ spec: made(everyChoice) }),
  gardenCurrency: of({ tables: made({ prices, yards }) }),
  gardenFasteners: of({
    beds,
    pieces: made(pieces),
    choices: made({ screws, prices: prices.rows }),
  }),
  gardenFill: of({
    beds,
    parts: made([{ material: material("topsoil"), share: 1, item: "topsoil" }]),
  }),
  gardenLiner: of({ beds, choices: made({ roll: { width: feet(6), length: feet(100) } }) }),
  gardenMass: of({ input: made({ boards: plan, volumes: [] }) }),
  gardenMulch: of({ beds, choices: fixed({ material: material("pine bark") }) }),
  gardenPieces: of({ beds, options: made({ prices: prices.rows, hand: [shelf] }) }),
  gardenTopDressing: of({ beds, choices: fixed({ material: material("compost") }) }),
  gardenTotal: of({ bill: made(bill) }),
  oldBoards: of({ beds, options: made({ onHand: read.onHand }) }),
  planGarden: of({ tables: fixed(read), spec: made(choices()), options: fixed({ solve }) }),
  planGardenBuying: of({ need: made(need), options: fixed({ solve }) }),
  shareReceipts: of({ receipts: made(bill.receipts), beds: fixed(["A"]) }),
};
