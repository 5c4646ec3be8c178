export { type CarbonNitrogen, carbonNitrogen, type HeapInput } from "./carbon-nitrogen.ts";
export { compostOveruse } from "./compost-overuse.ts";
export { type CompostDepth, type DressingAdvice, dressingAdvice } from "./dressing-advice.ts";
export { type HeapLoss, heapYield } from "./heap-yield.ts";
export { type MoisturePartnerOptions, moisturePartner } from "./moisture-partner.ts";
export { type TopDressing, type TopDressingOptions, topDressing } from "./top-dressing.ts";
