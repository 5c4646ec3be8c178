import type { PlanOptions } from "../lumber/index.ts";
import type { BuyingPlan } from "./buying-plan.ts";

/** The solver, and what else a buying plan may need. */
export interface BuyingOptions extends PlanOptions {
  /** Each better plan so far, the first one at once. */
  readonly improved?: (plan: BuyingPlan) => void;
}
