import { box, lines, svg, type Tree } from "./tree.ts";

/** A rectangle with slanted lines inside: an offcut. Drawn as lines, so that no pattern is needed. */
export function hatched(x: number, y: number, width: number, height: number): readonly Tree[] {
  const step = 9;
  const strokes: [number, number, number, number][] = [];
  for (let start = step / 2; start < width + height; start += step) {
    const x1 = x + Math.min(start, width);
    const y1 = y + Math.max(0, start - width);
    const x2 = x + Math.max(0, start - height);
    const y2 = y + Math.min(start, height);
    strokes.push([x1, y1, x2, y2]);
  }
  return [box("offcut", x, y, width, height), lines("hatch", strokes)];
}

/** The grain of a weathered board: short broken lines along it. */
export function grain(x: number, y: number, width: number, height: number): Tree {
  const strokes: [number, number, number, number][] = [];
  const rows = Math.max(2, Math.floor(height / 5));
  for (let row = 0; row < rows; row++) {
    const at = y + ((row + 0.6) * height) / rows;
    // Lengths and gaps repeat at odd numbers, so that rows don't fall in step.
    let from = (row * 37) % 29;
    for (let turn = row; from < width - 4; turn++) {
      const long = 34 + ((turn * 53) % 61);
      const to = Math.min(from + long, width - 2);
      strokes.push([x + from + 2, at, x + to, at]);
      from = to + 10 + ((turn * 31) % 23);
    }
  }
  return lines("grain", strokes);
}

/** Bark as short flecks. */
export function flecks(x: number, y: number, width: number, height: number): Tree {
  const strokes: [number, number, number, number][] = [];
  const rows = Math.max(1, Math.floor(height / 4));
  for (let row = 0; row < rows; row++) {
    const at = y + ((row + 0.5) * height) / rows;
    for (let from = 3 + ((row * 5) % 9); from < width - 6; from += 11) {
      const lean = (from + row) % 2 < 1 ? 1 : -1;
      strokes.push([x + from, at + lean, x + from + 5, at - lean]);
    }
  }
  return lines("fleck", strokes);
}

/** A measure line with a bar at each end, level or upright. */
export function dimensionLine(x1: number, y1: number, x2: number, y2: number): Tree {
  const level = Math.abs(y2 - y1) < Math.abs(x2 - x1);
  const bar = (x: number, y: number): [number, number, number, number] =>
    level ? [x, y - 4, x, y + 4] : [x - 4, y, x + 4, y];
  return lines("dim", [[x1, y1, x2, y2], bar(x1, y1), bar(x2, y2)]);
}

/** North as an arrow upwards. */
export function north(x: number, y: number): readonly Tree[] {
  return [
    svg("path", {
      class: "north",
      d: `M${x} ${y + 26}V${y}M${x - 4} ${y + 7}L${x} ${y}L${x + 4} ${y + 7}`,
    }),
  ];
}
