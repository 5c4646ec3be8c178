import type { Remark } from "../check/index.ts";
import type { BoardProblem } from "./board-problem.ts";
import { sizeInWords } from "./checks.ts";

/**
 * Boards on sale that cannot come to the garden, each with the reason: longer than the car carries,
 * at a yard that brings nothing, and not to be cut in two there, or too long for that as well.
 */
export function tooLongToLoad(
  { stock, pieces, loadLength, cutAtYard = false }: BoardProblem,
  onlyByCar: (yard: string) => boolean = () => true,
): Remark[] {
  if (loadLength === undefined) return [];
  const wanted = new Set(pieces.map((piece) => piece.section.name));
  const told = new Map<string, Remark>();
  for (const [row, { yard, section, length }] of stock.entries()) {
    const fits = length.si <= loadLength.si + 1e-9;
    if (yard === null || fits || !wanted.has(section.name) || !onlyByCar(yard)) continue;
    const halves = length.si <= 2 * loadLength.si + 1e-9;
    if (cutAtYard && halves) continue;
    const why = cutAtYard ? "and cut in two it still is" : "and it is not to be cut there";
    const board = `${section.name} of ${sizeInWords(length.si)} at ${yard}`;
    const text = `${board} is left out: it is longer than the car carries, ${sizeInWords(loadLength.si)}, ${why}.`;
    if (!told.has(text)) told.set(text, { path: ["stock", row + 1, "length"], text });
  }
  return [...told.values()];
}
