export { boardDrawing, type DrawingOptions, type DrawnPlan } from "./board-drawing.ts";
export type { DrawnBoard } from "./board-rows.ts";
export type { DrawnPiece } from "./piece-letters.ts";
export type { Drawing, Tree } from "./tree.ts";
