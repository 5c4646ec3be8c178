import { type Path, requireRecords } from "../check/index.ts";
import { Checks, type Length, quantity, type UnitSystem } from "../measure/index.ts";
import type { DrawnBoard } from "./board-rows.ts";

const nothing: Length = quantity(0, [1, 0, 0, 0, 0]);
/** Phones, wide phones, small and usual leaves and sheets of paper. */
export const defaultWidths: readonly number[] = [300, 420, 560, 670];

const systems: readonly UnitSystem[] = ["us", "metric"];

/** Throws unless the units are known and the widths are drawable. */
export function requireDrawable(units: unknown, widths: readonly unknown[]): void {
  const checks = new Checks().choice(units, systems, ["units"]);
  if (widths.length === 0) {
    checks.add({
      code: "missing",
      path: ["widths"],
      allowed: "at least one width in pixels",
      received: "",
      remedy: "Give the widths it is drawn for, as [300, 720].",
    });
  }
  widths.forEach((width, at) => {
    checks.number(width, ["widths", at + 1], { min: 200, max: 2000 });
  });
  checks.done();
}

/** Throws unless every size is a length above 0. */
export function requireSizes(sizes: Readonly<Record<string, unknown>>, path: Path): void {
  const checks = new Checks();
  for (const [name, size] of Object.entries(sizes)) {
    checks.quantity(size, "length", [...path, name], { above: nothing });
  }
  checks.done();
}

/** Throws where a place is given that has no east or no north. */
export function requirePlace(
  place: { readonly east: unknown; readonly north: unknown } | null | undefined,
  path: Path,
): void {
  if (place === undefined || place === null) return;
  new Checks()
    .quantity(place.east, "length", [...path, "east"])
    .quantity(place.north, "length", [...path, "north"])
    .done();
}

/** Throws unless every board, its pieces and its offcut have lengths. */
export function requireBoards(cuts: readonly DrawnBoard[]): void {
  requireRecords(cuts, ["cuts"]);
  const checks = new Checks();
  cuts.forEach((board, at) => {
    const path: Path = ["cuts", at + 1];
    checks
      .quantity(board.length, "length", [...path, "length"], { above: nothing })
      .quantity(board.section?.width, "length", [...path, "section", "width"], { above: nothing })
      .quantity(board.offcut, "length", [...path, "offcut"], { min: nothing })
      .count(board.cutCount, [...path, "cutCount"]);
    requireRecords(board.pieces, [...path, "pieces"]);
    board.pieces.forEach((piece, index) => {
      const place: Path = [...path, "pieces", index + 1, "length"];
      checks.quantity(piece.length, "length", place, { above: nothing });
    });
  });
  checks.done();
}
