import type { Caution, Remark } from "../check/index.ts";
import { type PatternUse, restGrains } from "../cutting/cut-part.ts";
import { boardsUsed, inSteps } from "../cutting/pattern-cost.ts";
import { nailsInOldBoards, neverBurn, sawingTreatedWood } from "../safety/index.ts";
import type { BoardPlan, BuyLine, CutBoard, PlanProof, SplicedPiece } from "./board-plan.ts";
import type { BoardProblem } from "./board-problem.ts";
import type { Certificate } from "./certificate.ts";
import { grainsToMoney } from "./certify.ts";
import { cutBoards, type SourcedBoard } from "./cut-boards.ts";
import { layOut, runsOf } from "./lay-out.ts";
import { type CuttingGroup, currencyOf } from "./make-groups.ts";
import { inCurrencyOf, labelled, shortenedPieces, totalLength } from "./plan-totals.ts";
import { shortenings } from "./shortening.ts";
import { unitsToLength, unitsUp } from "./whole-units.ts";

/** A group with the patterns chosen for it. */
export interface ChosenGroup {
  readonly group: CuttingGroup;
  readonly uses: readonly PatternUse[];
}

/** What goes into a plan besides the boards. */
export interface PlanParts {
  readonly chosen: readonly ChosenGroup[];
  readonly proof: PlanProof;
  readonly certificate: Certificate;
  readonly spliced: readonly SplicedPiece[];
  readonly remarks: readonly Remark[];
  /** Yards where boards may be bought to lie unused, so that an order is large enough. Default: none. */
  readonly fillers?: ReadonlySet<string>;
}

interface Laid {
  readonly boards: readonly SourcedBoard[];
  readonly buy: readonly BuyLine[];
  readonly short: ReadonlyMap<number, number>;
  readonly restGrains: number;
}

function layGroup(
  problem: BoardProblem,
  { group, uses }: ChosenGroup,
  fillers: ReadonlySet<string>,
): Laid {
  const laid = layOut(group, uses, problem.pieces);
  const short = shortenings(group, laid);
  const boards = cutBoards(problem, group, { boards: laid, short });
  let rests = 0;
  for (const board of laid) {
    if (!group.kinds[board.kind]?.bought) continue;
    for (const run of runsOf(group, board)) {
      const usedU = run.pieces.reduce(
        (sum, { place, entry }) =>
          sum + (group.classes[place]?.sizeU ?? 0) - (short.get(entry) ?? 0),
        0,
      );
      rests += restGrains(group.part, run.roomU, usedU);
    }
  }
  return {
    boards,
    buy: buyLines(problem, { group, uses }, { boards, fillers }),
    short,
    restGrains: rests,
  };
}

/** The buying list: a line for each row of the stock that boards are bought of. */
function buyLines(
  problem: BoardProblem,
  { group, uses }: ChosenGroup,
  laid: { readonly boards: readonly SourcedBoard[]; readonly fillers: ReadonlySet<string> },
): BuyLine[] {
  const planned = boardsUsed(group.part, uses);
  const cut = new Map<number, number>();
  for (const { row } of laid.boards) cut.set(row, (cut.get(row) ?? 0) + 1);
  return group.kinds.flatMap((kind, k) => {
    let spare = kind.stock.reduce((sum, row) => sum - (cut.get(row) ?? 0), planned[k] ?? 0);
    return kind.bought
      ? kind.stock.flatMap((row): BuyLine[] => {
          const stock = problem.stock[row];
          const used = cut.get(row) ?? 0;
          // A price break or a bundle may ask for more boards than pieces are cut from.
          const asked =
            kind.from > 1 ? Math.max(used, (planned[k] ?? 0) > 0 ? kind.from : 0) : used;
          const left = (stock?.limit ?? Number.POSITIVE_INFINITY) - used;
          const more = laid.fillers.has(stock?.yard ?? "") ? Math.max(0, Math.min(spare, left)) : 0;
          spare -= more;
          const count = inSteps(Math.max(asked, used + more), kind.step);
          if (!stock || stock.yard === null || count === 0) return [];
          const { yard, section, length, price } = stock;
          const sum = inCurrencyOf(problem, price.si * count);
          const unused = count - used;
          return [{ yard, section, timber: group.timber, length, count, unused, price, sum }];
        })
      : [];
  });
}

function cautionsOf(boards: readonly CutBoard[]): Caution[] {
  const treated = new Set(
    boards
      .filter(({ timber }) => /\btreated\b/.test(timber) && !/\buntreated\b/.test(timber))
      .map(({ section, timber }) => `${section.name} ${timber}`),
  );
  const kept = boards.filter(({ yard }) => yard === null).length;
  const cautions: Caution[] = [];
  if (treated.size > 0) {
    const because = [...treated].join(", ");
    cautions.push(sawingTreatedWood({ because }), neverBurn({ because }));
  }
  if (kept > 0) cautions.push(nailsInOldBoards({ because: `kept boards to cut: ${kept}` }));
  return cautions;
}

/** The whole plan: boards labelled, the buying list, totals, cautions. */
export function assemblePlan(problem: BoardProblem, parts: PlanParts): BoardPlan {
  const { fillers = new Set<string>() } = parts;
  const laid = parts.chosen.map((chosen) => layGroup(problem, chosen, fillers));
  const short = new Map(
    laid
      .flatMap((each) => [...each.short])
      .map(([entry, units]) => [
        entry,
        unitsToLength(unitsUp(problem.pieces[entry]?.length.si ?? 0) - units),
      ]),
  );
  const cuts = labelled(laid.flatMap((each) => each.boards));
  const buy = laid.flatMap((each) => each.buy);
  const bought = cuts.filter((cut) => cut.yard !== null);
  const kept = cuts.filter((cut) => cut.yard === null);
  const pieces = totalLength(cuts.flatMap((cut) => cut.pieces.map((piece) => piece.length)));
  const usedM = cuts.reduce((sum, cut) => sum + cut.length.si, 0);
  const share = usedM > 0 ? pieces.si / usedM : 1;
  const money = grainsToMoney(currencyOf(problem));
  const { proof, certificate, spliced } = parts;
  return {
    cuts,
    buy,
    cost: inCurrencyOf(
      problem,
      buy.reduce((sum, line) => sum + line.sum.si, 0),
    ),
    proof,
    boughtCount: buy.reduce((sum, line) => sum + line.count, 0),
    keptCount: kept.length,
    boughtLength: totalLength([
      ...bought.map((cut) => cut.length),
      ...buy.flatMap((line) => Array.from({ length: line.unused }, () => line.length)),
    ]),
    keptLength: totalLength(kept.map((cut) => cut.length)),
    piecesLength: pieces,
    cutCount: cuts.reduce((sum, cut) => sum + cut.cutCount, 0),
    yield: share,
    waste: 1 - share,
    shortened: shortenedPieces(problem, short),
    spliced,
    offcutWorth: money(laid.reduce((sum, each) => sum + each.restGrains, 0)),
    certificate,
    remarks: [...parts.remarks, ...spliced.map(joinRemark)],
    cautions: cautionsOf(cuts),
  };
}

function joinRemark({ name, parts, onStakes }: SplicedPiece): Remark {
  const where = onStakes ? "over a stake" : "where a stake is to be set at each joint";
  return { path: ["pieces", name], text: `${name} is joined of ${parts.length} parts, ${where}.` };
}
