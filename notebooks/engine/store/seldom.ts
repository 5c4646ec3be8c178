// What is seldom needed, apart from the index: a page that only reads a notebook does not fetch it.
export { importAll } from "./bring-in.ts";
export { exportAll } from "./everything.ts";
export { keepPlan, loadPlans, orderPlans, plansFollow, removePlan, renamePlan } from "./plans.ts";
export { bringBackDocument, listRemoved, type Removed, removeDocument } from "./remove.ts";
export { renameDocument } from "./rename.ts";
export { listStates, readState } from "./states.ts";
