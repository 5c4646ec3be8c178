import { tapeLength, textWidth } from "./labels.ts";
import { dimensionLine } from "./marks.ts";
import { bandOf, type Rect, type Sketch } from "./plan-beds.ts";
import { px, svg, type Tree, words } from "./tree.ts";

const namePx = 15;

/** The beds' names: inside where they fit, level or upright; else below or above, where it is free. */
export function bedNames(
  sketch: Sketch,
): readonly { readonly drawn: Tree; readonly taken: Rect }[] {
  const taken: Rect[] = [...sketch.rects];
  return sketch.placed.map(({ bed }, index) => {
    const rect = sketch.rects[index] as Rect;
    const made = nameIn(bed.name, rect, bandOf(sketch, index)) ?? nameBeside(bed.name, rect, taken);
    taken.push(made.taken);
    return made;
  });
}

function nameIn(name: string, rect: Rect, band: number) {
  const inside = { wide: rect.wide - 2 * band, high: rect.high - 2 * band };
  const long = textWidth(name, namePx);
  const x = rect.x + rect.wide / 2;
  const y = rect.y + rect.high / 2;
  if (long <= inside.wide && inside.high >= 12) {
    return { drawn: words("bed-name", name, { x, y: y + 5.3, anchor: "middle" }), taken: rect };
  }
  if (long > inside.high || inside.wide < 12) return undefined;
  const transform = `translate(${px(x + 5)} ${px(y)}) rotate(-90)`;
  return {
    drawn: svg("text", { class: "bed-name", "text-anchor": "middle", transform }, [name]),
    taken: rect,
  };
}

function nameBeside(name: string, rect: Rect, taken: readonly Rect[]) {
  const long = textWidth(name, 13.5);
  const x = rect.x + rect.wide / 2;
  const spot = (top: number): Rect => ({ x: x - long / 2, y: top, wide: long, high: 15 });
  const below = spot(rect.y + rect.high + 1);
  const above = spot(rect.y - 16);
  const free = [below, above].find((place) => isFree(place, taken));
  if (free !== undefined) {
    return { drawn: words("note", name, { x, y: free.y + 12, anchor: "middle" }), taken: free };
  }
  // Nowhere free: over the bed after all, since a bed without its name is of no use.
  const over = spot(rect.y + rect.high / 2 - 8);
  return {
    drawn: words("bed-name tight", name, { x, y: over.y + 12.5, anchor: "middle" }),
    taken: over,
  };
}

/** The sizes of the first bed of each size, where there is room beside it. */
export function dimensions(sketch: Sketch, given: readonly Rect[]): readonly Tree[] {
  const { placed, rects, units, width } = sketch;
  const taken: Rect[] = [...given];
  const seen = new Set<string>();
  const parts: Tree[] = [];
  placed.forEach(({ bed, upright }, index) => {
    const key = `${Math.round(bed.length.si * 1000)} ${Math.round(bed.width.si * 1000)}`;
    if (seen.has(key) || seen.size >= 6) return;
    const rect = rects[index] as Rect;
    const [wide, high] = upright ? [bed.width, bed.length] : [bed.length, bed.width];
    const above = { x: rect.x, y: rect.y - 24, wide: rect.wide, high: 22 };
    const wideText = tapeLength(wide, units);
    if (above.y >= 0 && isFree(above, taken) && textWidth(wideText, 13.5) <= rect.wide + 8) {
      parts.push(
        dimensionLine(rect.x, rect.y - 7, rect.x + rect.wide, rect.y - 7),
        words("note", wideText, { x: rect.x + rect.wide / 2, y: rect.y - 12, anchor: "middle" }),
      );
      taken.push(above);
      seen.add(key);
    }
    const highText = tapeLength(high, units);
    const room = textWidth(highText, 13.5) + 16;
    const beside = { x: rect.x + rect.wide + 1, y: rect.y, wide: room, high: rect.high };
    if (beside.x + room <= width && isFree(beside, taken)) {
      const x = rect.x + rect.wide + 7;
      parts.push(
        dimensionLine(x, rect.y, x, rect.y + rect.high),
        words("note", highText, { x: x + 7, y: rect.y + rect.high / 2 + 4.5 }),
      );
      taken.push(beside);
      seen.add(key);
    }
  });
  return parts;
}

function isFree(spot: Rect, taken: readonly Rect[]): boolean {
  return taken.every(
    (rect) =>
      spot.x + spot.wide <= rect.x ||
      rect.x + rect.wide <= spot.x ||
      spot.y + spot.high <= rect.y ||
      rect.y + rect.high <= spot.y,
  );
}
