import { Given } from "../measure/given.ts";
import type { Duration } from "../measure/index.ts";
import { carbonLimits, rateLimits, shareLimits, spanLimits, yearsOf } from "./limits.ts";

/** Carbon of an area in two pools, in any one unit: what was added lately, and what became of it. */
export interface IcbmPools {
  /** Young, 0 to 1,000,000,000. */
  readonly young: number;
  /** Old, 0 to 1,000,000,000. */
  readonly old: number;
}

/** The parameters of the two pools. */
export interface IcbmOptions {
  /** Carbon added in a year, evenly, 0 to 1,000,000,000; default none. */
  readonly input?: number;
  /** Share of the rotting young that becomes old, 0 to 1: crops 0.125, manure 0.25, sludge 0.34. */
  readonly humified: number;
  /** How much faster all goes here than in a standard year, 0 to 100; default 1. */
  readonly climate?: number;
  /** Yearly rate of the young, 0 to 100; default 0.8. */
  readonly youngRate?: number;
  /** Yearly rate of the old, 0 to 100; default 0.00605. */
  readonly oldRate?: number;
}

/** The pools after a time, what was breathed out, and where all comes to rest. */
export interface IcbmState extends IcbmPools {
  readonly total: number;
  readonly respired: number;
  /** Where the pools no longer change; null where a pool that gets something does not rot. */
  readonly inTheEnd: IcbmPools | null;
}

/**
 * The carbon of a soil in two pools after a time, solved exactly: the introductory carbon balance
 * model (ICBM). Fitted to mineral topsoil.
 *
 * @param pools `young` and `old` carbon at the start.
 * @param span 0 to 1,000 years.
 * @param options `input` a year, default none; share `humified`; `climate`, default 1; `youngRate`,
 * default 0.8; `oldRate`, default 0.00605 a year.
 * @throws ProblemError where a figure is missing, of another kind or out of range.
 * @rule dY/dt = input - k1 r Y; dO/dt = humified k1 r Y - k2 r O
 * @source andren-katterer-1997
 * @example
 * const fallow = icbm({ young: 0.3, old: 3.96 }, times(20, year), { humified: 0.13, climate: 1.32 });
 * Number(fallow.total.toFixed(3)) // => 3.409
 */
export function icbm(pools: IcbmPools, span: Duration, options: IcbmOptions): IcbmState {
  const given = new Given();
  const start = given.fields(pools, ["pools"]);
  const chosen = given.fields(options, ["options"]);
  const young = given.plain(start.young, ["pools", "young"], carbonLimits);
  const old = given.plain(start.old, ["pools", "old"], carbonLimits);
  const years = yearsOf(given.si(span, "duration", ["span"], spanLimits));
  const input = given.plain(chosen.input ?? 0, ["input"], carbonLimits);
  const humified = given.plain(chosen.humified, ["humified"], shareLimits);
  const climate = given.plain(chosen.climate ?? 1, ["climate"], rateLimits);
  const youngRate = given.plain(chosen.youngRate ?? 0.8, ["youngRate"], rateLimits);
  const oldRate = given.plain(chosen.oldRate ?? 0.00605, ["oldRate"], rateLimits);
  given.done();
  const rates = { young: youngRate * climate, old: oldRate * climate, humified };
  const after = icbmAfter({ young, old }, years, { ...rates, input });
  const total = after.young + after.old;
  return {
    ...after,
    total,
    respired: young + old + input * years - total,
    inTheEnd: restOf({ young: pools.young, old: pools.old }, rates, input),
  };
}

/** Both rates a year with the climate in them, the share humified, and the input a year. */
export interface IcbmRates {
  readonly young: number;
  readonly old: number;
  readonly humified: number;
  readonly input: number;
}

/** For inner loops: the pools after some years, exactly; plain numbers, no checks. */
export function icbmAfter(pools: IcbmPools, years: number, rates: IcbmRates): IcbmPools {
  const { young: a, old: b, humified, input } = rates;
  const [ea, eb] = [Math.exp(-a * years), Math.exp(-b * years)];
  const young = pools.young * ea + input * grown(a, years);
  // What the young pool's own decay, and its input's, has put into the old one.
  const fromPool = humified * a * pools.young * between(a, b, years);
  const fromInput = humified * input * (grown(b, years) - between(a, b, years));
  // What is too small for a number may come out a hair below nothing.
  return { young, old: Math.max(0, pools.old * eb + fromPool + fromInput) };
}

/** (1 - e^(-rate t)) / rate, t where the rate is 0. */
const grown = (rate: number, t: number): number => (rate === 0 ? t : -Math.expm1(-rate * t) / rate);

/** (e^(-bt) - e^(-at)) / (a - b), t e^(-at) where they are alike. */
function between(a: number, b: number, t: number): number {
  const apart = (a - b) * t;
  if (Math.abs(apart) < 1e-9) return t * Math.exp(-a * t) * (1 + apart / 2);
  return (Math.exp(-b * t) * -Math.expm1(-apart)) / (a - b);
}

function restOf(
  pools: IcbmPools,
  { young, old, humified }: Omit<IcbmRates, "input">,
  input: number,
): IcbmPools | null {
  if (input > 0 && (young === 0 || (old === 0 && humified > 0))) return null;
  // What does not rot stays, and with it what the young pool leaves there.
  const kept = pools.old + (young > 0 ? humified * pools.young : 0);
  return {
    young: young > 0 ? input / young : pools.young,
    old: old > 0 ? (humified * input) / old : kept,
  };
}
