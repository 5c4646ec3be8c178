import type { Remark } from "../check/index.ts";
import type { Checks } from "../measure/index.ts";
import type { BoardProblem } from "./board-problem.ts";

/** The timber each piece and each kept board counts as; empty where none has a name. */
export interface ChosenTimbers {
  /** One for each piece. */
  readonly pieces: readonly string[];
  /** One for each board. */
  readonly stock: readonly string[];
  readonly remarks: readonly Remark[];
}

const plain = (timber: string | undefined) => (timber ?? "").trim().toLowerCase();

const named = (timbers: Iterable<string>) => [...new Set(timbers)].sort();

/**
 * Says which timber pieces without one are cut from: the only one priced in their section; of
 * several the one chosen. Kept boards without a timber count as what their section's pieces are.
 */
export function chooseTimbers(
  problem: BoardProblem,
  checks: Checks,
  choice: string | undefined,
): ChosenTimbers {
  const remarks = new Map<string, Remark>();
  const wanted = plain(choice);
  const timberOf = (section: string, row: number): string => {
    const inSection = problem.stock.filter((board) => board.section.name === section);
    const bought = named(inSection.filter((b) => b.yard !== null).map((b) => plain(b.timber)));
    const known = bought.length > 0 ? bought : named(inSection.map((b) => plain(b.timber)));
    if (known.includes("") || known.length === 0) return "";
    const [only] = known;
    const taken = known.includes(wanted) ? wanted : known.length === 1 ? only : undefined;
    if (taken === undefined) {
      checks.add({
        code: "missing",
        path: ["pieces", row, "timber"],
        allowed: known.map((timber) => `“${timber}”`).join(" or "),
        received: wanted,
        remedy: `${section} is sold in ${known.join(" and ")}: choose one.`,
      });
      return "";
    }
    const why = known.length === 1 ? "the only timber priced" : "as chosen";
    const text = `${section} pieces that name no timber are taken as ${taken}, ${why}.`;
    if (!remarks.has(text)) remarks.set(text, { path: ["pieces", row, "timber"], text });
    return taken;
  };
  const pieces = problem.pieces.map((piece, i) => {
    const own = plain(piece.timber);
    return own === "" ? timberOf(piece.section.name, i + 1) : own;
  });
  const stock = problem.stock.map((board, i) => {
    const own = plain(board.timber);
    if (own !== "" || board.yard !== null) return own;
    const name = board.section.name;
    const uses = named(pieces.filter((_, j) => problem.pieces[j]?.section.name === name));
    const taken = uses.includes(wanted) ? wanted : (uses[0] ?? "");
    if (taken !== "") {
      const text = `Kept ${name} boards that name no timber are taken as ${taken}.`;
      remarks.set(text, { path: ["stock", i + 1, "timber"], text });
    }
    return taken;
  });
  return { pieces, stock, remarks: [...remarks.values()] };
}
