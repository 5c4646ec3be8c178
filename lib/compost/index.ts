export { bedsDressed } from "./beds-dressed.ts";
export { type CarbonNitrogen, carbonNitrogen, type HeapInput } from "./carbon-nitrogen.ts";
export { compostOveruse } from "./compost-overuse.ts";
export { type CompostSalts, compostSalts, type SaltExtract } from "./compost-salts.ts";
export { type CompostDepth, type DressingAdvice, dressingAdvice } from "./dressing-advice.ts";
export { type DressingForNitrogen, dressingForNitrogen } from "./dressing-for-nitrogen.ts";
export { fertiliserFor, nitrogenForWood } from "./fertiliser.ts";
export {
  type HeapMaterial,
  type HeapMix,
  type HeapPart,
  type HeapSeason,
  heapMix,
} from "./heap-mix.ts";
export { type HeapLoss, heapYield } from "./heap-yield.ts";
export { type MoisturePartnerOptions, moisturePartner } from "./moisture-partner.ts";
export { type NitrogenBalance, type NutrientNeed, nitrogenBalance } from "./nitrogen-balance.ts";
export {
  type CompostNutrients,
  type NutrientSupply,
  type NutrientSupplyOptions,
  nutrientSupply,
} from "./nutrient-supply.ts";
export { type RatioPartner, type RatioPartnerOptions, ratioPartner } from "./ratio-partner.ts";
export { type TopDressing, type TopDressingOptions, topDressing } from "./top-dressing.ts";
