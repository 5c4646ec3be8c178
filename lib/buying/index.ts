export type { BuyingOptions } from "./buying-options.ts";
export type { BuyingPlan, BuyingProof, Way, YardsFloor } from "./buying-plan.ts";
export type { BuyingProblem } from "./buying-problem.ts";
export { planBuying } from "./plan-buying.ts";
export { validateBuyingPlan } from "./validate-buying-plan.ts";
