export { type BuyingRow, buyingList } from "./buying-list.ts";
export type { BuyingOptions } from "./buying-options.ts";
export type { BuyingPlan, BuyingProof, Way, YardsFloor } from "./buying-plan.ts";
export type { BuyingProblem } from "./buying-problem.ts";
export {
  type BuyingComparison,
  type CompareBuyingOptions,
  compareBuying,
} from "./compare-buying.ts";
export { type ByHand, firstFitBuying } from "./first-fit-buying.ts";
export { type LoadOptions, type LoadRow, loadOrder } from "./load-order.ts";
export { planBuying } from "./plan-buying.ts";
export { validateBuyingPlan } from "./validate-buying-plan.ts";
