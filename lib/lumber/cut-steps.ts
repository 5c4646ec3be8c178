import type { Length } from "../measure/index.ts";
import type { CutBoard, CutPiece } from "./board-plan.ts";
import { metresToLength } from "./saw-length.ts";

/** Where the tape is held for a mark. */
export type TapeEnd = "board's end" | "squared end" | "yard's cut" | "cut before";

/** One stroke of the saw, or a last piece that the stroke before it parts off. */
export interface CutStep {
  readonly kind: "at the yard" | "squaring" | "mitre" | "piece";
  /** The order of sawing, from 1; null for a last piece that needs no stroke of its own. */
  readonly cut: number | null;
  /**
   * Where the tape is read: the end of the piece, the saw goes beyond it. Null for a mitred piece,
   * which is measured from the cut before, long point to long point, the board turned over.
   */
  readonly mark: Length | null;
  readonly from: TapeEnd;
  /** The place on its board, from 1, of the piece that comes off; null where none does. */
  readonly place: number | null;
}

// A board is used up where its last piece ends at its end: lengths are whole 1/320 mm.
const hairM = 1e-5;

interface Run {
  readonly pieces: readonly CutPiece[];
  readonly lengthM: number;
  readonly from: TapeEnd;
}

/** What is sawn in one go, each with where its tape begins. */
function runsOf(board: CutBoard, kerfM: number): readonly Run[] {
  const { atYard, pieces, length, squared } = board;
  const from: TapeEnd = squared.si > 0 ? "squared end" : "board's end";
  if (atYard === null) return [{ pieces, lengthM: length.si - squared.si, from }];
  const { first, pieces: onFirst } = atYard;
  return [
    { pieces: pieces.slice(0, onFirst), lengthM: first.si - squared.si, from },
    {
      pieces: pieces.slice(onFirst),
      lengthM: length.si - first.si - kerfM,
      from: "yard's cut",
    },
  ];
}

/** What is sawn of a board, in order, with the tape's marks; the saw takes `kerfM`. */
export function cutSteps(board: CutBoard, kerfM: number): readonly CutStep[] {
  const steps: CutStep[] = [];
  let cut = 0;
  const add = (step: Omit<CutStep, "cut">, isSawn = true) =>
    steps.push({ ...step, cut: isSawn ? ++cut : null });
  const { atYard, squared } = board;
  const whole = { from: "board's end", place: null } as const;
  if (atYard !== null) add({ kind: "at the yard", mark: atYard.first, ...whole });
  if (squared.si > 0) add({ kind: "squaring", mark: squared, ...whole });
  let place = 0;
  for (const { pieces, lengthM, from } of runsOf(board, kerfM)) {
    let atM = 0;
    let isMitred = false;
    for (const piece of pieces) {
      place += 1;
      if (piece.mitred && !isMitred) {
        add({ kind: "mitre", mark: metresToLength(atM), from, place: null });
        isMitred = true;
      }
      atM += piece.length.si;
      const isSawn = piece.mitred || atM < lengthM - hairM;
      const mark = piece.mitred ? null : metresToLength(atM);
      add({ kind: "piece", mark, from: piece.mitred ? "cut before" : from, place }, isSawn);
      atM += kerfM;
    }
  }
  return steps;
}
