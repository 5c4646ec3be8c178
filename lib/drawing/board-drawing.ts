import { requireRecord } from "../check/index.ts";
import type { Length, UnitSystem } from "../measure/index.ts";
import { type BoardGroup, type BoardRow, boardGroups, type DrawnBoard } from "./board-groups.ts";
import { countLabel, marks, overLabel, tickBoxes, tickLines } from "./board-labels.ts";
import { type BoardLook, boardHeight, doubleLine, drawnBoard, orderHigh } from "./board-rows.ts";
import { flow } from "./flow.ts";
import { textWidth } from "./labels.ts";
import { hatched } from "./marks.ts";
import { letterItems, type PieceLetter, pieceLetters } from "./piece-letters.ts";
import { defaultWidths, requireBoards, requireDrawable } from "./require-drawable.ts";
import { scaleBar } from "./scale-bar.ts";
import { box, type Drawing, picture, svg, type Tree, words } from "./tree.ts";

/** What is drawn: a board plan will do. */
export interface DrawnPlan {
  readonly cuts: readonly DrawnBoard[];
  /** Pieces cut shorter than asked. */
  readonly shortened?: readonly {
    readonly name: string;
    readonly bed: string;
    readonly short: Length;
  }[];
  /** Of a board plan, the saw's kerf. Default: what the pieces leave of a board. */
  readonly certificate?: { readonly kerf: Length };
}

/** What every drawing takes: units and widths. */
export interface DrawingOptions {
  /** Units of the labels. Default: `us`. */
  readonly units?: UnitSystem;
  /** Widths it is drawn for, narrowest first, in pixels. Default: 300, 420, 560 and 670. */
  readonly widths?: readonly number[];
}

/**
 * The boards of a plan with their cuts, seen on the face, length and width to one scale: kept boards
 * first, boards cut alike in one row, saw cuts in red and numbered in their order, offcuts hatched, the
 * letters explained below. On paper each board has a box to tick.
 *
 * @param plan a board plan, or its `cuts`
 * @param options `units` of the labels; `widths` it is drawn for, 200 to 2,000 px
 * @returns a drawing in a form for each width
 * @throws ProblemError where a board has no length, or `units` or a width is not one of these
 * @rule One row a pattern with its count; every piece with its letter and the length it is cut to.
 * @source common practice
 * @example
 * boardDrawing({ cuts: [] }).alternative // => "No boards to cut."
 */
export function boardDrawing(plan: DrawnPlan, options: DrawingOptions = {}): Drawing {
  requireRecord(plan, ["plan"]);
  requireRecord(options, ["options"]);
  const { units = "us", widths = defaultWidths } = options;
  requireDrawable(units, widths);
  const { cuts, shortened = [], certificate } = plan;
  requireBoards(plan);
  const alternative = inWords(cuts);
  const kerfM = certificate?.kerf.si;
  const groups = boardGroups(cuts);
  const letters = pieceLetters(cuts);
  const shorts = new Map(shortened.map(({ name, bed, short }) => [`${bed}|${name}`, short]));
  return {
    kind: "drawing",
    title: "Boards with their cuts",
    alternative,
    ...(cuts.length === 0
      ? {}
      : {
          caption:
            "Lengths as they are cut, seen on the face of the board; saw cuts stand out over its edges, with their order above.",
        }),
    forms: widths.map((width, at) => ({
      from: at === 0 ? 0 : width,
      tree: sheet({ groups, letters, shorts, units, width, alternative, kerfM }),
    })),
  };
}

interface Sheet {
  readonly groups: readonly BoardGroup[];
  readonly letters: ReadonlyMap<string, PieceLetter>;
  readonly shorts: ReadonlyMap<string, Length>;
  readonly units: UnitSystem;
  readonly width: number;
  readonly alternative: string;
  readonly kerfM: number | undefined;
}

function sheet(given: Sheet): Tree {
  const { groups, letters, units, width, kerfM } = given;
  const broad = width >= 500;
  const left = broad ? 104 : 0;
  const right = broad ? 96 : 1;
  const longestM = Math.max(
    ...groups.flatMap((group) => group.rows.map((row) => row.board.length.si)),
    0.1,
  );
  const look: BoardLook = { pxPerM: (width - left - right) / longestM, units, letters, kerfM };
  const parts: Tree[] = [];
  const severalSections = new Set(groups.map(({ section, timber }) => section + timber)).size > 1;
  let y = 16;
  for (const group of groups) {
    const title = words("label strong", heading(group, severalSections), { x: 0, y });
    y += broad ? 14 : 8;
    for (const [at, row] of group.rows.entries()) {
      const drawn = broad
        ? broadRow(row, { left, y }, look, given)
        : narrowRow(row, { width, y }, look, given);
      // On paper the drawing may be parted between such groups, and nowhere else.
      parts.push(together(at === 0 ? [title, ...drawn.parts] : drawn.parts));
      y += drawn.height;
    }
    y += 22;
  }
  const bar = scaleBar(left, y - 4, look.pxPerM, { units, most: broad ? 200 : 110 });
  y += 26;
  const legend = flow(
    [...letterItems(letters.values(), { units, bedsShown: broad ? 8 : 4 }), ...swatches(groups)],
    { x: 0, y, width },
    { between: 18, line: 22 },
  );
  return picture(
    "boards",
    { width, height: groups.length === 0 ? 24 : y + legend.height - 8 },
    given.alternative,
    groups.length === 0
      ? [words("note", "No boards to cut.", { x: 0, y: 16 })]
      : [...parts, together([...bar, ...legend.parts])],
  );
}

/** What stays on one sheet of paper. */
function together(parts: readonly Tree[]): Tree {
  return svg("g", { class: "keep" }, parts);
}

function heading(group: BoardGroup, severalSections: boolean): string {
  const section = severalSections
    ? `, ${group.section.replace("x", "×")} ${group.timber}`.trimEnd()
    : "";
  return group.kept ? `Boards kept, sawn first${section}` : `Boards from ${group.yard}${section}`;
}

function broadRow(
  row: BoardRow,
  at: { readonly left: number; readonly y: number },
  look: BoardLook,
  given: Sheet,
): { readonly parts: readonly Tree[]; readonly height: number } {
  const { board } = row;
  const high = boardHeight(board, look.pxPerM);
  const lines = tickLines(row);
  const slot = Math.max(high.all, 34 + 12 * lines);
  const y = at.y + orderHigh + (slot - high.all) / 2;
  const middle = y + high.board / 2 - 6 * lines;
  const parts = [
    ...drawnBoard(row, { x: at.left, y }, look),
    words("label strong", countLabel(row, look.units), {
      x: at.left - 12,
      y: middle - 2,
      anchor: "end",
    }),
    words("note", marks(row, at.left - 14), { x: at.left - 12, y: middle + 14, anchor: "end" }),
    ...tickBoxes(row, { right: at.left - 12, y: middle + 20 }),
    ...overLabel(row, look.units, given.shorts).map((text, line, all) =>
      words("note", text, {
        x: at.left + board.length.si * look.pxPerM + 9,
        y: y + high.board / 2 + 4.8 + (line - (all.length - 1) / 2) * 16,
      }),
    ),
  ];
  return { parts, height: orderHigh + slot + 8 };
}

function narrowRow(
  row: BoardRow,
  at: { readonly width: number; readonly y: number },
  look: BoardLook,
  given: Sheet,
): { readonly parts: readonly Tree[]; readonly height: number } {
  const { board } = row;
  const high = boardHeight(board, look.pxPerM);
  const label = countLabel(row, look.units);
  const over = overLabel(row, look.units, given.shorts).join(", ");
  const free = at.width - textWidth(label, 14) - textWidth(over, 13.5) - 30;
  const parts = [
    words("label strong", label, { x: 0, y: at.y + 15 }),
    words("note", marks(row, free), { x: textWidth(label, 14) + 10, y: at.y + 15 }),
    words("note", over, { x: at.width, y: at.y + 15, anchor: "end" }),
    ...drawnBoard(row, { x: 0.5, y: at.y + 22 + orderHigh }, look),
  ];
  return { parts, height: high.all + orderHigh + 32 };
}

function swatches(groups: readonly BoardGroup[]) {
  const boards = groups.flatMap((group) => group.rows.map((row) => row.board));
  const swatch = (text: string, draw: (x: number, y: number) => readonly Tree[]) => ({
    width: 30 + textWidth(text, 13.5),
    draw: (x: number, y: number) => [...draw(x, y - 11), words("note", text, { x: x + 30, y })],
  });
  return [
    ...(boards.some((board) => board.cutCount > 0)
      ? [
          swatch("saw cut", (x, y) => [
            box("board", x, y, 24, 12),
            box("kerf", x + 11, y - 3, 2, 18),
          ]),
        ]
      : []),
    ...(boards.some(({ atYard = null }) => atYard !== null)
      ? [
          swatch("cut at the yard, before it goes on the car", (x, y) => [
            box("board", x, y, 24, 12),
            ...doubleLine(x + 12, y - 3, 18),
          ]),
        ]
      : []),
    ...(boards.some((board) => board.offcut.si > 0.0005)
      ? [swatch("offcut", (x, y) => hatched(x, y, 24, 12))]
      : []),
  ];
}

function inWords(cuts: readonly DrawnBoard[]): string {
  if (cuts.length === 0) return "No boards to cut.";
  const kept = cuts.filter((board) => board.yard === null).length;
  const yards = new Map<string, number>();
  for (const { yard } of cuts) if (yard !== null) yards.set(yard, (yards.get(yard) ?? 0) + 1);
  const pieces = cuts.reduce((sum, board) => sum + board.pieces.length, 0);
  const ways = boardGroups(cuts).reduce((sum, group) => sum + group.rows.length, 0);
  const from = [
    ...(kept > 0 ? [`${kept} kept`] : []),
    ...[...yards].map(([yard, count]) => `${count} from ${yard}`),
  ];
  const counted = (count: number, one: string, more: string) =>
    `${count} ${count === 1 ? one : more}`;
  return `${counted(ways, "way", "ways")} of sawing ${counted(cuts.length, "board", "boards")} (${from.join(", ")}) into ${counted(pieces, "piece", "pieces")}.`;
}
