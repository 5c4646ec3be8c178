import { requireRecord } from "../check/index.ts";
import {
  Checks,
  foot,
  inch,
  type Length,
  minus,
  over,
  plus,
  printQuantity,
  times,
} from "../measure/index.ts";
import { requireStock } from "./require-stock.ts";
import type { Screw, ScrewChoice, ScrewOffer } from "./screw.ts";

/** Two pieces held by a screw through the first. */
export interface BoardJoint {
  /** Thickness of the board the screw goes through first. */
  readonly board: Length;
  /** Thickness of the stake behind it, along the screw; for end grain, how far the piece runs on. */
  readonly into: Length;
}

/** The screws one can buy, and how the joint is loaded. */
export interface BoardScrewsOptions<S extends Screw> {
  /** Screws one can buy. */
  readonly stock: readonly S[];
  /** How the fibres of the piece behind lie to the screw: across it, or along it. Default: `side`. */
  readonly grain?: "side" | "end";
  /** Whether the joint slides (`shear`) or is pulled off (`withdrawal`). Default: `shear`. */
  readonly load?: "shear" | "withdrawal";
  /** Wood left before the point. Default: 1/4 in. */
  readonly clearance?: Length;
  /** Least depth in the piece behind, in diameters of the screw. Default: 6. */
  readonly diameters?: number;
}

/**
 * The screw that fastens a board to a stake, or to the end grain of the next board: long enough to
 * hold, short enough to hide its point. Of the screws that do both, the thickest, in its shortest
 * length. End grain never holds a screw that is pulled along the fibres, so none is offered there.
 *
 * @param joint `board`: 1/2 to 6 in; `into`: 1/2 in to 40 ft
 * @param options `stock`; `grain`, default `side`; `load`, default `shear`; `clearance`: 0 to 2 in,
 *   default 1/4 in; `diameters`: 1 to 20, default 6
 * @returns the screw or none, its bounds, the reason, and what would help where none does
 * @throws ProblemError where a size is no length or out of its range, or the stock is empty
 * @rule Board + 6 diameters at least; both thicknesses - 1/4 in at most; no withdrawal from end grain.
 * @source nds-2018, common practice
 * @example
 * boardScrews({ board: times(inch, 1.5), into: times(inch, 1.5) }, { stock: [{ length: times(inch, 3), diameter: times(inch, 0.19) }] }).screw // => null
 */
export function boardScrews<S extends Screw>(
  joint: BoardJoint,
  options: BoardScrewsOptions<S>,
): ScrewChoice<S> {
  requireRecord(joint, ["joint"]);
  requireRecord(options, ["options"]);
  const {
    stock,
    grain = "side",
    load = "shear",
    clearance = over(inch, 4),
    diameters = 6,
  } = options;
  new Checks()
    .quantity(joint.board, "length", ["board"], { min: over(inch, 2), max: over(foot, 2) })
    .quantity(joint.into, "length", ["into"], { min: over(inch, 2), max: times(foot, 40) })
    .quantity(clearance, "length", ["clearance"], { min: times(inch, 0), max: times(inch, 2) })
    .number(diameters, ["diameters"], { min: 1, max: 20 })
    .choice(grain, ["side", "end"], ["grain"])
    .choice(load, ["shear", "withdrawal"], ["load"])
    .done();
  requireStock(stock);
  const most = minus(plus(joint.board, joint.into), clearance);
  const leastFor = (screw: Screw): Length => plus(joint.board, times(screw.diameter, diameters));
  if (grain === "end" && load === "withdrawal") return endGrainRefused(most);

  const holding = stock.filter((screw) => screw.length.si >= leastFor(screw).si - 1e-9);
  const fitting = holding.filter((screw) => screw.length.si <= most.si + 1e-9);
  const screw = [...fitting].sort(thickestThenShortest)[0] ?? null;
  const thinnest = [...stock].sort((a, b) => a.diameter.si - b.diameter.si)[0] ?? null;
  const measured = screw ?? thinnest;
  const least = measured === null ? null : leastFor(measured);
  if (screw !== null) {
    return { screw, most, least, reason: reasonFor(screw, diameters, most), offers: [] };
  }
  return {
    screw: null,
    most,
    least,
    reason: `No screw in stock reaches ${diameters} diameters past the board and stays within ${inInches(most)}, both thicknesses less the clearance.`,
    offers: offersFor(joint, holding, clearance),
  };
}

function thickestThenShortest(a: Screw, b: Screw): number {
  return b.diameter.si - a.diameter.si || a.length.si - b.length.si;
}

function reasonFor(screw: Screw, diameters: number, most: Length): string {
  return `The thickest in stock that both holds (${diameters} diameters of ${inInches(screw.diameter)} past the board) and stays within ${inInches(most)}, in its shortest length.`;
}

function endGrainRefused(most: Length): ScrewChoice<never> {
  return {
    screw: null,
    most,
    least: null,
    reason: "A screw along the fibres is not relied on against being pulled out.",
    offers: [
      {
        kind: "side-grain",
        text: "Screw into the side of a stake or cleat in the corner instead.",
      },
      { kind: "plate", text: "Or hold the corner with plates on both boards." },
    ],
  };
}

function offersFor(joint: BoardJoint, holding: readonly Screw[], clearance: Length): ScrewOffer[] {
  const offers: ScrewOffer[] = [];
  const shortest = [...holding].sort((a, b) => a.length.si - b.length.si)[0];
  if (shortest !== undefined) {
    const size = minus(plus(shortest.length, clearance), joint.board);
    offers.push({
      kind: "thicker",
      text: `A stake at least ${inInches(size)} thick takes the ${inInches(shortest.length)} screw.`,
      size,
    });
  }
  // Room for washer, nut and a thread or two showing.
  const bolt = plus(plus(joint.board, joint.into), times(inch, 0.75));
  offers.push({
    kind: "bolt",
    text: `Or a bolt right through, at least ${inInches(bolt)} long, with washers on both sides.`,
    size: bolt,
  });
  return offers;
}

function inInches(length: Length): string {
  return printQuantity(length, { system: "us" });
}
