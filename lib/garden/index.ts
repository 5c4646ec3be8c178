export type { Bed, BedPlace } from "./bed.ts";
export { type BillRow, billRows } from "./bill-rows.ts";
export { type BoardRow, boardsToBuy } from "./boards-to-buy.ts";
export type { BuyingChoices, GardenBuyingOptions } from "./buying-choices.ts";
export { compareGardenBuying } from "./compare-garden-buying.ts";
export { type CutRow, cutRows } from "./cut-rows.ts";
export { type CuttingChoices, cuttingChoices } from "./cutting-choices.ts";
export { type FrameChoices, frameChoices } from "./frame-choices.ts";
export { type GardenBeds, gardenBeds } from "./garden-beds.ts";
export { type GardenBill, gardenBill } from "./garden-bill.ts";
export { gardenCautions } from "./garden-cautions.ts";
export { type GardenChoices, type GardenChoicesSpec, gardenChoices } from "./garden-choices.ts";
export { type GardenColumn, gardenColumns } from "./garden-columns.ts";
export { gardenCurrency, type MoneyTables } from "./garden-currency.ts";
export {
  type FasteningChoices,
  type GardenFasteners,
  gardenFasteners,
} from "./garden-fasteners.ts";
export { type FillPart, type GardenFill, gardenFill } from "./garden-fill.ts";
export { type GardenLiner, gardenLiner, type LinerChoices } from "./garden-liner.ts";
export {
  type GardenMass,
  type GardenMassInput,
  gardenMass,
  type MassRow,
  type WeighedVolume,
} from "./garden-mass.ts";
export { type GardenMulch, gardenMulch, type MulchChoices } from "./garden-mulch.ts";
export { type GardenPieces, type GardenPiecesOptions, gardenPieces } from "./garden-pieces.ts";
export type { GardenNeed } from "./garden-problem.ts";
export {
  type BedSoilYears,
  type GardenSoilChoices,
  type GardenSoilYear,
  type GardenSoilYears,
  type GardenSpring,
  gardenSoilYears,
} from "./garden-soil-years.ts";
export {
  type GardenTopDressing,
  gardenTopDressing,
  type TopDressingChoices,
} from "./garden-top-dressing.ts";
export { gardenTotal } from "./garden-total.ts";
export { type MoneyChoices, moneyChoices } from "./money-choices.ts";
export { type OldBoards, type OldBoardsOptions, oldBoards } from "./old-boards.ts";
export { type GardenPlan, type GardenTables, planGarden } from "./plan-garden.ts";
export { type GardenBuying, planGardenBuying } from "./plan-garden-buying.ts";
export { type BedSpec, readBeds } from "./read-beds.ts";
export { type KeptBoards, readOnHand } from "./read-on-hand.ts";
export { type HandPiece, readPieces } from "./read-pieces.ts";
export { readPrices } from "./read-prices.ts";
export { readWeather } from "./read-weather.ts";
export { readYards } from "./read-yards.ts";
export type { ScrewUse } from "./screw-uses.ts";
export { toBed } from "./to-bed.ts";
