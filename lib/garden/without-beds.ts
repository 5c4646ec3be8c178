import type { Problem } from "../check/index.ts";
import type { Piece } from "../lumber/index.ts";

/**
 * The pieces of the beds that can be built all the same: without every bed that has a piece of the
 * kind a problem of the boards stands at. A problem of a length stands for all pieces of its section
 * as long or longer, one of a section (no price, limits too small) for all of that section.
 */
export function withoutBeds(pieces: readonly Piece[], problems: readonly Problem[]): Piece[] {
  const hindered = new Set<string>();
  for (const { path } of problems) {
    const at = path.indexOf("pieces");
    const [row, field] = path.slice(at + 1);
    if (at < 0 || typeof row !== "number") continue;
    const found = pieces[row - 1];
    if (found === undefined) continue;
    for (const piece of pieces)
      if (isAlike(piece, found) && (field !== "length" || piece.length.si >= found.length.si))
        hindered.add(piece.bed);
  }
  return pieces.filter((piece) => !hindered.has(piece.bed));
}

function isAlike(a: Piece, b: Piece): boolean {
  return a.section.name === b.section.name && (a.timber ?? "") === (b.timber ?? "");
}
