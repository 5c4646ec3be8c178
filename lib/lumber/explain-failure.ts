import type { Problem } from "../check/index.ts";
import { isEndless, longestU } from "../cutting/cut-part.ts";
import type { BoardProblem } from "./board-problem.ts";
import { sizeInWords } from "./checks.ts";
import type { CuttingGroup } from "./make-groups.ts";

function bedsOf(problem: BoardProblem, entries: readonly number[]): string {
  const beds = new Set(entries.flatMap((entry) => problem.pieces[entry]?.bed ?? []));
  return [...beds].join(", ");
}

export function groupName(group: CuttingGroup): string {
  return group.timber === "" ? group.section.name : `${group.section.name} ${group.timber}`;
}

/** Pieces that no board of the group can hold: one problem for each length, naming the beds. */
export function piecesThatFitNothing(problem: BoardProblem, group: CuttingGroup): Problem[] {
  const bought = group.kinds.filter((kind) => kind.bought);
  const longest = Math.max(0, ...group.kinds.map(longestU));
  return group.classes.flatMap((each): Problem[] => {
    if (each.leastU <= longest) return [];
    const [entry = 0] = each.entries;
    const piece = problem.pieces[entry];
    const beds = bedsOf(problem, each.entries);
    const path = ["pieces", entry + 1, "length"];
    const received = `${piece?.name ?? ""}, ${sizeInWords(piece?.length.si ?? 0)}`;
    if (bought.length === 0 && !offered(problem, group)) return [];
    const longestM = Math.max(
      0,
      ...problem.stock.filter((b) => b.section.name === group.section.name).map((b) => b.length.si),
    );
    return [
      {
        code: "no-fit",
        path,
        allowed: `a piece no longer than the longest ${groupName(group)} board, ${sizeInWords(longestM)}`,
        received,
        remedy: `Find longer boards for ${beds}, or make the piece of two joined over a stake.`,
      },
    ];
  });
}

function offered(problem: BoardProblem, group: CuttingGroup): boolean {
  return problem.stock.some(
    (board) =>
      board.yard !== null &&
      board.section.name === group.section.name &&
      (board.timber ?? "").trim().toLowerCase() === group.timber,
  );
}

/** Why a group whose pieces each fit some board has no plan: no price, or limits too small. */
export function noPlanProblem(problem: BoardProblem, group: CuttingGroup): Problem {
  const entries = group.classes.flatMap((each) => each.entries);
  const beds = bedsOf(problem, entries);
  const pieces = group.classes.reduce((sum, each) => sum + each.demand, 0);
  const path = ["pieces", (entries[0] ?? 0) + 1, "section"];
  const name = groupName(group);
  if (!offered(problem, group)) {
    return {
      code: "unpriced",
      path,
      allowed: `a price for ${name} boards, or kept boards for all ${pieces} pieces`,
      received: `${name}, for ${beds}`,
      remedy: `Add a line for ${name} to the price list, or choose another section or timber.`,
    };
  }
  if (group.kinds.some(isEndless)) {
    return {
      code: "no-fit",
      path,
      allowed: "boards that the car carries, or an order large enough to be brought",
      received: `${pieces} pieces of ${name}, for ${beds}`,
      remedy:
        "Let the yard cut the boards, change the load length, or order more where goods are brought.",
    };
  }
  const limits = group.kinds.map(
    (kind) => `${kind.supply} of ${sizeInWords((kind.capacityU - group.part.kerfU) / 320_000)}`,
  );
  return {
    code: "contradiction",
    path,
    allowed: `no more pieces than the limited boards hold: ${limits.join(", ")}`,
    received: `${pieces} pieces of ${name}, for ${beds}`,
    remedy: "Raise the limits, or add a length the yard has enough of.",
  };
}
