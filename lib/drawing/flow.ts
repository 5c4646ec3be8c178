import type { Tree } from "./tree.ts";

/** Something of a known width that stands in a line with others. */
export interface FlowItem {
  readonly width: number;
  readonly draw: (x: number, y: number) => readonly Tree[];
}

/** Sets items in lines as words are set, each line as full as the width allows. */
export function flow(
  items: readonly FlowItem[],
  place: { readonly x: number; readonly y: number; readonly width: number },
  gaps: { readonly between: number; readonly line: number },
): { readonly parts: readonly Tree[]; readonly height: number } {
  const parts: Tree[] = [];
  let x = 0;
  let line = 0;
  for (const item of items) {
    if (x > 0 && x + item.width > place.width) {
      x = 0;
      line += 1;
    }
    parts.push(...item.draw(place.x + x, place.y + line * gaps.line));
    x += item.width + gaps.between;
  }
  return { parts, height: items.length === 0 ? 0 : (line + 1) * gaps.line };
}
