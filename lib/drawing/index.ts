export {
  type BandsDrawingOptions,
  bandsDrawing,
  type DrawnLevel,
  type DrawnPoint,
  type DrawnRange,
  type DrawnSeries,
} from "./bands-drawing.ts";
export { type BarsDrawingOptions, barsDrawing, type DrawnAmount } from "./bars-drawing.ts";
export { bedInSection } from "./bed-in-section.ts";
export type { DrawnBed } from "./bed-places.ts";
export { type BedsDrawingOptions, bedsFromAbove } from "./beds-from-above.ts";
export { boardDrawing, type DrawingOptions, type DrawnPlan } from "./board-drawing.ts";
export type { DrawnBoard } from "./board-groups.ts";
export type { DrawnPiece } from "./piece-letters.ts";
export type { DrawnLayer, SectionedBed } from "./section-parts.ts";
export type { Drawing, Tree } from "./tree.ts";
export { type YearColumn, type YearColumnsOptions, yearColumns } from "./year-columns.ts";
