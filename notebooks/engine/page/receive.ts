import type { CellState, FromRoom } from "../types/index.ts";
import {
  type Amount,
  Budget,
  byField,
  type Check,
  finite,
  list,
  record,
  recordWith,
  text,
  word,
  yesNo,
} from "./checks.ts";
import { cautions, cellError, entry, problems, remarks, shown } from "./shown-checks.ts";

const short = text(500);
const id: Check = (value, budget) =>
  text(300)(value, budget) && /^[^#]+#[^#]+$/.test(String(value));
const ids = list(id, 5_000);
const session = finite;

const outlineCell = record(
  {
    id,
    name: short,
    file: short,
    line: finite,
    what: word("cell", "table"),
    hints: record({ pinned: yesNo, quiet: yesNo, folded: yesNo, title: short }),
    formula: text(200_000),
    takes: ids,
    gives: ids,
    functions: list(record({ name: short, sources: list(short, 100) }, { rule: text(5_000) }), 500),
  },
  { longWork: yesNo },
);

const trouble = record({ file: short, line: finite, message: text(5_000) });

const state = record(
  { id, cautions, problems },
  { shown, entry, error: cellError, sum: text(50_000), remarks, leftOut: short, cutShort: yesNo },
);

const message = byField("kind", {
  ready: record({}),
  alive: record({}),
  outline: record({ session, cells: list(outlineCell, 5_000) }, { problems: list(trouble, 1_000) }),
  starting: record({ session, cell: id }),
  values: record({ session, turn: finite, cells: list(recordWith({ id }), 5_000) }),
  progress: record({ session, cell: id, words: text(1_000) }, { fraction: finite }),
  settled: record({ session, turn: finite, working: ids }),
});

/** What one message may hold at most: a garden of 2,000 beds with its drawings is well below. */
const most: Amount = { parts: 1_000_000, characters: 20_000_000 };

/** What there is to spend on reading one message. */
export const budgetOfOne = () => new Budget(most);

/**
 * Reads a message from the closed room, where anybody's code may have made it: of a known kind, of
 * the known shape, no larger than a page can take. Gives undefined for any other.
 */
export function readMessage(data: unknown, budget = budgetOfOne()): FromRoom | undefined {
  if (!message(data, budget)) return undefined;
  const known = data as FromRoom;
  return known.kind === "values"
    ? {
        ...known,
        cells: known.cells.map((cell) => (state(cell, budget) ? cell : unshowable(cell, budget))),
      }
    : known;
}

/** One cell that sent something odd must not take the others with it. */
function unshowable({ id }: CellState, { unknown }: Budget): CellState {
  const at = id.indexOf("#");
  const error = {
    kind: "formula" as const,
    message:
      "It gave something of a kind or a size that the page does not show" +
      (unknown === undefined ? "." : `: “${unknown}”.`),
    file: id.slice(0, at),
    line: 0,
    names: [id.slice(at + 1)],
    problems: [],
  };
  return { id, cautions: [], problems: [], error };
}
