export type { StopSignal } from "../cutting/pacer.ts";
export type { PartPlan as GroupPlan } from "../cutting/solve-part.ts";
export type {
  IntegerProgram,
  ProgramColumn,
  ProgramRow,
  ProgramSolution,
  Solve,
  SolveLimits,
} from "../cutting/solver.ts";
export { boardFeet } from "./board-feet.ts";
export { boardMass } from "./board-mass.ts";
export type {
  BoardPlan,
  BuyLine,
  CutBoard,
  CutPiece,
  PlanProof,
  ShortenedPiece,
  SplicedPiece,
  YardCut,
} from "./board-plan.ts";
export type { BoardProblem, OffcutWorth, StockBoard } from "./board-problem.ts";
export type { BoardWorth, Certificate, FloorPart, PieceValue } from "./certificate.ts";
export { checkCertificate } from "./check-certificate.ts";
export type { CutStep, TapeEnd } from "./cut-steps.ts";
export { type CuttingRow, cuttingRows } from "./cutting-rows.ts";
export { cuttingSheet, type SheetBoards, type SheetStep } from "./cutting-sheet.ts";
export type { Seasoning } from "./dressed-sizes.ts";
export { framePieces } from "./frame-pieces.ts";
export { frameDiagonal, frameHeight } from "./frame-size.ts";
export type { FrameSpec, Lap } from "./frame-spec.ts";
export type { Piece, PiecePart } from "./piece.ts";
export { type PlanOptions, planBoards, planBoardsAtYard } from "./plan-boards.ts";
export {
  type BoardItem,
  dressedSection,
  readBoardItem,
  readSection,
  type Section,
  type SectionOptions,
} from "./section.ts";
export { type StopLength, stopLengths } from "./stop-lengths.ts";
export { type ValidateBoardPlanOptions, validateBoardPlan } from "./validate-board-plan.ts";
export { type WoodSpecies, woodDensity } from "./wood-density.ts";
export { sizeAtMoisture, woodShrinkage } from "./wood-shrinkage.ts";
