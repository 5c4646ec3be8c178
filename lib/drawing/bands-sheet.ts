import { axisOver, roundStep, type Scale } from "./axis.ts";
import { shortened, textWidth } from "./labels.ts";
import { spreadOut } from "./spread-out.ts";
import { lines, picture, px, svg, type Tree, words } from "./tree.ts";
import { valueAt } from "./value-at.ts";

/** A place of a line in plain numbers. */
export interface SheetPoint {
  readonly at: number;
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export interface SheetSeries {
  readonly name: string;
  readonly shape: "line" | "step";
  readonly points: readonly SheetPoint[];
}

export interface SheetLevel {
  readonly name: string;
  readonly value: number;
}

/** What all forms of the sheet are drawn from. */
export interface BandsSheet {
  readonly series: readonly SheetSeries[];
  readonly levels: readonly SheetLevel[];
  readonly least: number;
  readonly most: number;
  readonly scale: Scale;
  readonly across: string;
  readonly marked: number | undefined;
  readonly alternative: string;
}

const textPx = 14;
const lineHigh = 18;

/** Where values and places lie on the sheet. */
interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly foot: number;
  x(at: number): number;
  y(value: number): number;
}

export function bandsSheet(sheet: BandsSheet, width: number): Tree {
  const { series, levels, least, most, scale } = sheet;
  const broad = width >= 500;
  const axis = axisOver([least, most], scale, broad ? 5 : 4);
  const names = [...series.map(({ name }) => name), ...levels.map(({ name }) => name)];
  // At their lines' ends names are found without a key; on a narrow sheet they stand above.
  const atEnds = broad ? Math.min(Math.max(...names.map(widthOf)) + 12, width * 0.3) : 8;
  const keyRows = broad ? 0 : names.length;
  const left = Math.max(...axis.ticks.map(({ text }) => widthOf(text))) + 10;
  const top = 14 + keyRows * lineHigh;
  const foot = top + (broad ? 240 : 190);
  const places = series.flatMap(({ points }) => points.map(({ at }) => at));
  const [first, last] = [Math.min(...places), Math.max(...places)];
  const span = last - first || 1;
  const frame: Frame = {
    left,
    right: width - atEnds,
    top,
    foot,
    x: (at) => left + ((at - first) / span) * (width - atEnds - left),
    y: (value) => foot - ((value - axis.from) / (axis.to - axis.from || 1)) * (foot - top),
  };
  return picture("bands", { width, height: foot + 44 }, sheet.alternative, [
    ...grid(axis.ticks, frame),
    ...(axis.from < 0 ? [lines("dim", [[left, frame.y(0), frame.right, frame.y(0)]])] : []),
    ...series.map((one, at) => bandPart(one, at, frame)),
    ...levels.map((level, at) => levelPart(level, at, frame)),
    ...series.map((one, at) => linePart(one, at, frame)),
    ...placesAlong([first, last], sheet.across, frame),
    ...(broad ? endNames(sheet, frame, width) : keyAbove(sheet, width)),
    ...markedPart(sheet, frame, width),
  ]);
}

const widthOf = (text: string): number => textWidth(text, textPx);

function grid(
  ticks: readonly { readonly at: number; readonly text: string }[],
  { left, right, y }: Frame,
): readonly Tree[] {
  return [
    lines(
      "square",
      ticks.map(({ at }) => [left, y(at), right, y(at)]),
    ),
    ...ticks.map(({ at, text }) =>
      words("note", text, { x: left - 6, y: y(at) + 4.5, anchor: "end" }),
    ),
  ];
}

/** The corners of a line, the places between two of a step included. */
function corners(
  { points, shape }: SheetSeries,
  value: (point: SheetPoint) => number,
): readonly (readonly [at: number, value: number])[] {
  return points.flatMap((point, place): (readonly [number, number])[] => {
    const before = points[place - 1];
    const corner = [point.at, value(point)] as const;
    return shape === "step" && before ? [[point.at, value(before)], corner] : [corner];
  });
}

function pathOf(places: readonly (readonly [number, number])[], { x, y }: Frame): string {
  return places
    .map(([at, value], place) => `${place === 0 ? "M" : "L"}${px(x(at))} ${px(y(value))}`)
    .join("");
}

function bandPart(series: SheetSeries, at: number, frame: Frame): Tree {
  const above = corners(series, ({ high }) => high);
  const below = [...corners(series, ({ low }) => low)].reverse();
  const flat = series.points.every(({ low, high }) => low === high);
  return svg("path", {
    class: `band of-${at + 1}`,
    d: flat ? "" : `${pathOf([...above, ...below], frame)}Z`,
  });
}

function linePart(series: SheetSeries, at: number, frame: Frame): Tree {
  const d = pathOf(
    corners(series, ({ likely }) => likely),
    frame,
  );
  return svg("path", { class: `line of-${at + 1}`, d });
}

function levelPart({ value }: SheetLevel, at: number, { left, right, y }: Frame): Tree {
  return lines(levelKind(at), [[left, y(value), right, y(value)]]);
}

const levelKind = (at: number): string => (at === 0 ? "level" : "level other");

/** Whole places along the foot, as many as have room. */
function placesAlong(
  [first, last]: readonly [number, number],
  across: string,
  { left, right, foot, x }: Frame,
): readonly Tree[] {
  const room = Math.max(1, Math.floor((right - left) / 52));
  const step = last > first ? roundStep((last - first) / room) : 1;
  const [from, to] = [Math.ceil(first / step - 1e-9), Math.floor(last / step + 1e-9)];
  const within = Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => {
    const at = Number(((from + index) * step).toPrecision(12));
    return { at, text: String(Number(at.toPrecision(9))) };
  });
  return [
    lines("dim", [[left, foot, right, foot]]),
    lines(
      "dim",
      within.map(({ at }) => [x(at), foot, x(at), foot + 4]),
    ),
    ...within.map(({ at, text }) =>
      words("note", text, { x: x(at), y: foot + 19, anchor: "middle" }),
    ),
    words("note", across, { x: (left + right) / 2, y: foot + 38, anchor: "middle" }),
  ];
}

/** Names where their lines end, moved apart where they would lie upon each other. */
function endNames(
  { series, levels }: BandsSheet,
  { right, top, foot, y }: Frame,
  width: number,
): readonly Tree[] {
  const ends = [
    ...series.map(({ name, points }) => ({ name, y: y(points.at(-1)?.likely ?? 0) })),
    ...levels.map(({ name, value }) => ({ name, y: y(value) })),
  ];
  const places = spreadOut(
    ends.map((end) => end.y),
    { apart: lineHigh, from: top - 6, to: foot + 6 },
  );
  return ends.flatMap((end, at) => {
    const place = places[at] ?? end.y;
    return [
      lines("lead-line", [[right + 1, end.y, right + 8, place]]),
      words("label", shortened(end.name, width - right - 11, textPx), {
        x: right + 11,
        y: place + 4.8,
      }),
    ];
  });
}

/** A key above: a piece of each line with its name. */
function keyAbove({ series, levels }: BandsSheet, width: number): readonly Tree[] {
  const rows = [
    ...series.map(({ name }, at) => ({ name, kind: `line of-${at + 1}` })),
    ...levels.map(({ name }, at) => ({ name, kind: levelKind(at) })),
  ];
  return rows.flatMap(({ name, kind }, at) => {
    const y = 6 + at * lineHigh;
    return [
      svg("path", { class: kind, d: `M0 ${px(y)}H28` }),
      words("label", shortened(name, width - 40, textPx), { x: 36, y: y + 4.8 }),
    ];
  });
}

/** The marked place: a line down, a dot on each line, the value beside it. */
function markedPart(
  { series, marked, scale }: BandsSheet,
  frame: Frame,
  width: number,
): readonly Tree[] {
  if (marked === undefined) return [];
  const { top, foot, x, y } = frame;
  const found = series.flatMap((one, at) => {
    const point = valueAt(one, marked);
    return point === undefined ? [] : [{ at, value: point.likely }];
  });
  if (found.length === 0) return [];
  const texts = found.map(({ value }) => scale.print(value));
  const isRight = x(marked) + Math.max(...texts.map(widthOf)) + 12 < Math.min(frame.right, width);
  const places = spreadOut(
    found.map(({ value }) => y(value) - 8),
    { apart: 17, from: top + 4, to: foot - 6 },
  );
  return [
    lines("mark", [[x(marked), top - 4, x(marked), foot]]),
    ...found.flatMap(({ at, value }, place): readonly Tree[] => [
      svg("circle", { class: `dot of-${at + 1}`, cx: x(marked), cy: y(value), r: 4.5 }),
      words("label strong halo", texts[place] ?? "", {
        x: x(marked) + (isRight ? 8 : -8),
        y: (places[place] ?? 0) + 1,
        anchor: isRight ? "start" : "end",
      }),
    ]),
  ];
}
