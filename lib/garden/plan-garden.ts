import { type Caution, type Problem, type Remark, requireRecord } from "../check/index.ts";
import type { PriceLine, YardTerms } from "../cost/index.ts";
import type { Piece } from "../lumber/index.ts";
import type { Money } from "../measure/index.ts";
import type { TableReading } from "../table/index.ts";
import type { Bed } from "./bed.ts";
import { type BillRow, billRows } from "./bill-rows.ts";
import { type BoardRow, boardsToBuy } from "./boards-to-buy.ts";
import type { GardenPlanning } from "./buying-choices.ts";
import { requireReading } from "./checks.ts";
import { type CutRow, cutRows } from "./cut-rows.ts";
import { gardenBeds } from "./garden-beds.ts";
import { type GardenBill, gardenBill } from "./garden-bill.ts";
import { gardenCautions } from "./garden-cautions.ts";
import { type GardenChoicesSpec, gardenChoices } from "./garden-choices.ts";
import { type GardenFasteners, gardenFasteners } from "./garden-fasteners.ts";
import { type GardenFill, gardenFill } from "./garden-fill.ts";
import { type GardenLiner, gardenLiner } from "./garden-liner.ts";
import { type GardenMass, gardenMass } from "./garden-mass.ts";
import { type GardenMulch, gardenMulch } from "./garden-mulch.ts";
import { gardenPieces } from "./garden-pieces.ts";
import { type GardenTopDressing, gardenTopDressing } from "./garden-top-dressing.ts";
import { type OldBoards, oldBoards } from "./old-boards.ts";
import { type GardenBuying, planGardenBuying } from "./plan-garden-buying.ts";
import type { BedSpec } from "./read-beds.ts";
import type { KeptBoards } from "./read-on-hand.ts";
import type { HandPiece } from "./read-pieces.ts";

/** A garden's tables, read. */
export interface GardenTables {
  readonly beds: TableReading<BedSpec>;
  readonly onHand: TableReading<KeptBoards>;
  readonly yards: TableReading<YardTerms>;
  readonly prices: TableReading<PriceLine>;
  /** Pieces listed by hand, besides those of the beds. */
  readonly pieces?: TableReading<HandPiece>;
}

/** The whole path once: everything that follows from a garden's tables and the choices. */
export interface GardenPlan {
  readonly beds: readonly Bed[];
  readonly pieces: readonly Piece[];
  readonly boards: readonly BoardRow[];
  readonly cuts: readonly CutRow[];
  readonly fill: GardenFill;
  readonly topDressing: GardenTopDressing;
  readonly mulch: GardenMulch;
  readonly liner: GardenLiner;
  readonly fasteners: GardenFasteners;
  readonly oldBoards: OldBoards;
  readonly buying: GardenBuying;
  readonly bill: GardenBill;
  readonly billRows: readonly BillRow[];
  /** Null where the boards cannot be had; `problems` says why. */
  readonly total: Money | null;
  readonly mass: GardenMass;
  readonly cautions: readonly Caution[];
  /** Of all tables, and of the boards. */
  readonly problems: readonly Problem[];
  readonly remarks: readonly Remark[];
}

/**
 * Plans a garden: its tables in; pieces, boards, cuts, fittings, liner, fill, dressing, mulch, old
 * boards, bill, mass and cautions out. It calls, in order, the functions that a notebook calls cell
 * by cell. Rows of the tables that could not be read are left out, with their problems.
 *
 * @param tables as `readBeds`, `readOnHand`, `readYards`, `readPrices` and `readPieces` give them
 * @param spec the choices, as for `gardenChoices`
 * @param options `solve`, the solver of integer programmes, and what else the planner takes
 * @throws ProblemError where two currencies are written or a choice is out of its range
 * @rule each part as its own function has it
 * @source common practice
 * @example
 * const row = (name) => published.materials.find((each) => each.material === name);
 * const screws = [{ length: inch, diameter: times(0.138, inch) }];
 * const spec = {
 *   fill: [{ material: row("topsoil"), share: 3 }, { material: row("compost"), share: 1 }],
 *   topDressing: { material: row("compost") },
 *   mulch: { material: row("pine bark") },
 *   fastening: { screws },
 * };
 * const solve = async () => ({ state: "optimal", values: [], bound: 0, rowWorth: [] });
 * const prices = readPrices(readCsv("yard,item,size,price\nAlder,compost,2 cu ft,5.10", "prices"));
 * const yards = readYards(readCsv("yard,tax,trip_cost\nAlder,6 %,4", "yards"));
 * const onHand = readOnHand(readCsv("", "onHand"));
 * const beds = readBeds(readCsv("bed,length,width", "beds"));
 * const plan = await planGarden({ beds, onHand, yards, prices }, spec, { solve });
 * plan.total // => $0.00
 */
export async function planGarden(
  tables: GardenTables,
  spec: GardenChoicesSpec,
  options: GardenPlanning & { readonly improved?: (better: GardenPlan) => void },
): Promise<GardenPlan> {
  checkTables(tables);
  requireRecord(options, ["options"]);
  const choices = gardenChoices(spec);
  const prices = tables.prices.rows;
  const made = gardenBeds(tables.beds, choices.frame, prices);
  const { beds } = made;
  const { timber } = choices.frame;
  const hand = tables.pieces?.rows ?? [];
  const { pieces, remarks } = gardenPieces(beds, { prices, timber, hand });
  const { onHand, yards } = tables;
  const fill = gardenFill(beds, choices.fill);
  const topDressing = gardenTopDressing(beds, choices.topDressing);
  const mulch = gardenMulch(beds, choices.mulch);
  const liner = gardenLiner(beds, { prices, ...choices.liner });
  const fasteners = gardenFasteners(beds, pieces, { prices, ...choices.fastening });
  const needs = [fill, topDressing, mulch, liner, fasteners].flatMap((part) => part.needs);
  const need = { pieces, needs, onHand, yards, prices: tables.prices };
  const density = choices.woodDensity === undefined ? {} : { woodDensity: choices.woodDensity };
  const old = oldBoards(beds, { onHand, ...density });
  const planOf = (buying: GardenBuying): GardenPlan => {
    const bill = gardenBill(buying, beds);
    const mass = gardenMass({
      boards: bill.boards,
      ...density,
      volumes: [
        { what: "fill", volume: fill.total.order.likely, material: fill.material },
        { what: "top-dressing", volume: topDressing.toBuy, material: choices.topDressing.material },
        { what: "mulch", volume: mulch.volume, material: choices.mulch.material },
      ],
    });
    return {
      beds,
      pieces,
      boards: boardsToBuy(bill),
      cuts: cutRows(bill.boards),
      fill,
      topDressing,
      mulch,
      liner,
      fasteners,
      oldBoards: old,
      buying,
      bill,
      billRows: billRows(bill),
      total: bill.boardProblems.length > 0 ? null : bill.total,
      mass,
      cautions: gardenCautions([made, topDressing, liner, old, bill]),
      problems: [
        ...made.problems,
        ...[tables.onHand, tables.yards, tables.prices, tables.pieces].flatMap(
          (reading) => reading?.problems ?? [],
        ),
        ...bill.problems,
        ...bill.boardProblems,
      ],
      remarks: [...made.remarks, ...remarks, ...bill.remarks],
    };
  };
  const { improved, ...planning } = options;
  const buying = await planGardenBuying(need, {
    ...choices.cutting,
    ...choices.money,
    ...planning,
    ...(improved && { improved: (better: GardenBuying) => improved(planOf(better)) }),
  });
  return planOf(buying);
}

function checkTables(tables: GardenTables): void {
  requireRecord(tables, ["tables"]);
  for (const name of ["beds", "onHand", "yards", "prices"] as const) {
    requireReading(tables[name], ["tables", name]);
  }
  if (tables.pieces !== undefined) requireReading(tables.pieces, ["tables", "pieces"]);
}
