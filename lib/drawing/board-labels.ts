import { namesInRuns } from "../lumber/name-runs.ts";
import type { Length, UnitSystem } from "../measure/index.ts";
import type { BoardRow } from "./board-groups.ts";
import { soldLength, tapeLength, textWidth } from "./labels.ts";
import type { DrawnPiece } from "./piece-letters.ts";
import { box, svg, type Tree, withFractions, words } from "./tree.ts";

const pieceTextPx = 13.5;
/** A lower board has its labels under it. */
export const leastForTextInside = 18;
const twoLines = 38;

/** "4 at 8′" */
export function countLabel(row: BoardRow, units: UnitSystem): string {
  return `${row.names.length} at ${soldLength(row.board.length, units)}`;
}

/** What is chalked on the boards, as much of it as there is room for. */
export function marks(row: BoardRow, room: number): string {
  const runs = namesInRuns(row.names);
  for (let shown = runs.length; shown > 0; shown--) {
    const text = runs.slice(0, shown).join(", ") + (shown < runs.length ? " …" : "");
    if (textWidth(text, 13.5) <= room) return text;
  }
  return "";
}

/** What is over at the end, and what is cut short. */
export function overLabel(
  row: BoardRow,
  units: UnitSystem,
  shorts: ReadonlyMap<string, Length>,
): readonly string[] {
  const { board } = row;
  const short = board.pieces
    .map((piece) => shorts.get(`${piece.bed}|${piece.name}`))
    .find((length) => length !== undefined);
  const over = board.offcut.si > 0.0005 ? [`${tapeLength(board.offcut, units)} over`] : [];
  const cut = board.cutCount === 0 ? ["no cut"] : over;
  return short === undefined ? cut : [...cut, `${tapeLength(short, units)} short`];
}

// As many boxes to tick as boards; of very many, one for all of them.
const tick = { side: 9, step: 12, across: 7, most: 21 } as const;

const tickCount = ({ names }: BoardRow) => (names.length > tick.most ? 1 : names.length);

/** How many lines of boxes stand under a row's label. */
export function tickLines(row: BoardRow): number {
  return Math.ceil(tickCount(row) / tick.across);
}

/** Boxes to tick off on paper, one a board, in lines that end at the right. */
export function tickBoxes(
  row: BoardRow,
  { right, y }: { readonly right: number; readonly y: number },
): readonly Tree[] {
  const count = tickCount(row);
  return Array.from({ length: count }, (_, at) => {
    const line = Math.floor(at / tick.across);
    const inLine = Math.min(tick.across, count - line * tick.across);
    const x = right - (inLine - (at % tick.across)) * tick.step + (tick.step - tick.side);
    return box("tick", x, y + line * tick.step, tick.side, tick.side);
  });
}

interface Labelled {
  readonly piece: DrawnPiece;
  readonly letter: string;
  readonly beds: readonly string[];
}

/** A piece's letter, its length and its beds, as much of it as there is room for. */
export function pieceLabel(
  { piece, letter, beds }: Labelled,
  where: { readonly x: number; readonly y: number; readonly wide: number; readonly high: number },
  units: UnitSystem,
): readonly Tree[] {
  const length = ` ${tapeLength(piece.length, units)}`;
  const own = beds.join(", ");
  const inside = where.high >= leastForTextInside;
  const room = where.wide - 8;
  const fits = (text: string) => textWidth(text, pieceTextPx) <= room;
  if (textWidth(letter, pieceTextPx) + 2 > where.wide) return [];
  const middle = where.x + where.wide / 2;
  const hasTwo = where.high >= twoLines && own !== "" && fits(own) && fits(letter + length);
  const isLong = !hasTwo && own !== "" && fits(`${letter}${length}, ${own}`);
  const rest = isLong ? `${length}, ${own}` : fits(letter + length) ? length : "";
  const baseline = inside
    ? where.y + where.high / 2 + (hasTwo ? -3 : 4.8)
    : where.y + where.high + 15;
  const kind = inside ? "piece" : "piece under";
  const children = [svg("tspan", { class: "letter" }, [letter]), ...withFractions(rest)];
  const first = svg(
    "text",
    { class: kind, x: middle, y: baseline, "text-anchor": "middle" },
    children,
  );
  if (!hasTwo) return [first];
  return [first, words(kind, own, { x: middle, y: baseline + 16, anchor: "middle" })];
}
