export { type Band, quantilesOf } from "./quantiles.ts";
export { type QuasiRandomOptions, quasiRandom } from "./quasi-random.ts";
