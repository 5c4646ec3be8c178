export { type HumusBalance, type HumusOptions, humusBalance } from "./humus-balance.ts";
export { type IcbmOptions, type IcbmPools, type IcbmState, icbm } from "./icbm.ts";
export { type JanssenOptions, janssenLeft, janssenTemperature } from "./janssen.ts";
export type { RothcPools, RothcSplit } from "./rothc.ts";
export { type RothcAtRest, type RothcRestSoil, rothcAtRest } from "./rothc-at-rest.ts";
export { type RothcMonthSpec, type RothcSoil, type RothcState, rothcRun } from "./rothc-run.ts";
export { shareLeft, yearlyRate } from "./share-left.ts";
