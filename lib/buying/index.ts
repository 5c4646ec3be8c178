export type { BuyingPlan, BuyingProof, Way, YardsFloor } from "./buying-plan.ts";
export type { BuyingProblem } from "./buying-problem.ts";
export { validateBuyingPlan } from "./validate-buying-plan.ts";
