import type { CellState, FromRoom } from "../types/index.ts";
import { Budget, byField, type Check, finite, list, record, text, word, yesNo } from "./checks.ts";
import { cautions, cellError, entry, problems, shown } from "./shown-checks.ts";

const short = text(500);
const id: Check = (value, budget) =>
  text(300)(value, budget) && /^[^#]+#[^#]+$/.test(String(value));
const ids = list(id, 5_000);
const session = finite;

const outlineCell = record({
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
});

const trouble = record({ file: short, line: finite, message: text(5_000) });

const state = record(
  { id, cautions, problems },
  { shown, entry, error: cellError, sum: text(50_000), leftOut: short, cutShort: yesNo },
);

const message = byField("kind", {
  ready: record({}),
  alive: record({}),
  outline: record({ session, cells: list(outlineCell, 5_000) }, { problems: list(trouble, 1_000) }),
  starting: record({ session, cell: id }),
  values: record({ session, turn: finite, cells: list(record({ id }), 5_000) }),
  progress: record({ session, cell: id, words: text(1_000) }, { fraction: finite }),
  settled: record({ session, turn: finite, working: ids }),
});

/** What one message may hold at most: a garden of 2,000 beds with its drawings is well below. */
const most = { parts: 1_000_000, characters: 20_000_000 };

/**
 * Reads a message from the closed room, where anybody's code may have made it: of a known kind, of
 * the known shape, no larger than a page can take. Gives undefined for any other.
 */
export function readMessage(data: unknown): FromRoom | undefined {
  const budget = new Budget(most);
  if (!message(data, budget)) return undefined;
  const known = data as FromRoom;
  return known.kind === "values"
    ? {
        ...known,
        cells: known.cells.map((cell) => (state(cell, budget) ? cell : unshowable(cell))),
      }
    : known;
}

/** One cell that sent something odd must not take the others with it. */
function unshowable({ id }: CellState): CellState {
  const at = id.indexOf("#");
  const error = {
    kind: "formula" as const,
    message: "It gave something of a kind or a size that the page does not show.",
    file: id.slice(0, at),
    line: 0,
    names: [id.slice(at + 1)],
    problems: [],
  };
  return { id, cautions: [], problems: [], error };
}

/** Counts messages, so that a room that floods the page is ended. */
export class RateGate {
  private since = 0;
  private count = 0;
  private readonly perSecond: number;

  constructor(perSecond = 20_000) {
    this.perSecond = perSecond;
  }

  /** Whether one more may come at this time (milliseconds). */
  admits(now: number): boolean {
    if (now - this.since >= 1_000) {
      this.since = now;
      this.count = 0;
    }
    this.count += 1;
    return this.count <= this.perSecond;
  }
}
