export { areaCovered } from "./area-covered.ts";
export { type BagCount, bagCount } from "./bag-count.ts";
export { type BagMass, bagMass } from "./bag-mass.ts";
export { type BagsOrBulk, bagsOrBulk } from "./bags-or-bulk.ts";
export { type BarrowLoads, type BarrowLoadsOptions, barrowLoads } from "./barrow-loads.ts";
export { type BedFill, type BedFillOptions, bedFill } from "./bed-fill.ts";
export { type BedInside, type BedSides, bedInside } from "./bed-inside.ts";
export { bedVolume } from "./bed-volume.ts";
export { type BlendVolume, blendVolumes } from "./blend-volumes.ts";
export { coverVolume } from "./cover-volume.ts";
export { depthCovered } from "./depth-covered.ts";
export { type DigOut, type DigOutOptions, digOut, type Trench } from "./dig-out.ts";
export { type DiggingRate, type DiggingWork, diggingHours } from "./digging-hours.ts";
export { type DugSoil, type DugSoilOptions, dugSoil } from "./dug-soil.ts";
export { type HeapRoom, type HeapRoomOptions, heapRoom } from "./heap-room.ts";
export {
  type FillLayer,
  type LayeredFill,
  type LayeredFillOptions,
  layeredFill,
} from "./layered-fill.ts";
export { type LeadLevel, type LeadReading, leadReading } from "./lead-reading.ts";
export { type Moisture, materialDensity } from "./material-density.ts";
export { type MixAdvice, type MixRule, mixAdvice } from "./mix-advice.ts";
export type { Offer, OfferCost } from "./offer-cost.ts";
export { outsideFittedSoil } from "./outside-fitted-soil.ts";
export {
  type PurchasesOptions,
  purchasesByYear,
  type YearNeed,
  type YearPurchase,
} from "./purchases-by-year.ts";
export { type RoomForSoilOptions, roomForSoil } from "./room-for-soil.ts";
export { type RootDepth, type RootRoom, rootRoom } from "./root-room.ts";
export { type RottingPart, rottingBlend } from "./rotting-blend.ts";
export type { RottingMaterial } from "./rotting-material.ts";
export { settledVolume } from "./settled-volume.ts";
export { type SettlingMaterial, settlingOrder } from "./settling-order.ts";
export { type BlendPart, type SoilMaterial, soilBlend } from "./soil-blend.ts";
export type { SoilLayer } from "./soil-layer.ts";
export { type SoilMass, soilMass, type WeighedMaterial } from "./soil-mass.ts";
export {
  type SoilMonth,
  type SoilMonthWeather,
  type SoilYear,
  type SoilYears,
  type SoilYearsOptions,
  type SpringDressing,
  soilYears,
} from "./soil-years.ts";
export { type SoilState, type SwellingSoil, type SwellOptions, swell } from "./swell.ts";
export { type SwellByWeight, swellByWeight } from "./swell-by-weight.ts";
export { type TotalFill, totalFill } from "./total-fill.ts";
export { type UpkeepDressing, type UpkeepOptions, upkeepDressing } from "./upkeep-dressing.ts";
