import { Given } from "../measure/given.ts";
import { carbonLimits, shareLimits, temperatureLimits } from "./limits.ts";
import {
  nextDeficit,
  type RothcPools,
  type RothcSplit,
  rothcAdd,
  rothcCover,
  rothcDecay,
  rothcDeficit,
  rothcMoisture,
  rothcRespired,
  rothcSplits,
  rothcTemperature,
  rothcTotal,
} from "./rothc.ts";

/** A month: its weather, whether plants cover the soil, and what is added at its end. */
export interface RothcMonthSpec {
  /** Mean of the air, -60 to 60 °C. */
  readonly temperatureC: number;
  /** 0 to 5,000 mm. */
  readonly rainMm: number;
  /** From an open pan, 0 to 2,000 mm; plants' need for water over 0.75. */
  readonly panMm: number;
  /** Default yes. */
  readonly covered?: boolean;
  /** Carbon added, 0 to 1,000,000,000; default none. */
  readonly carbon?: number;
  /** Shares of it by pool, together 1; default as of crops, 1.44 to 1. */
  readonly split?: RothcSplit;
}

/** The soil. */
export interface RothcSoil {
  /** Clay, 0 to 100 per cent of the dry mass. */
  readonly clayPercent: number;
  /** Depth, 1 to 100 cm; default 23. */
  readonly depthCm?: number;
  /** Deficit of water at the beginning, in mm, 0 or below; default none. */
  readonly deficitMm?: number;
}

/** What drove a month, and how the pools stand at its end. */
export interface RothcState extends RothcPools {
  readonly total: number;
  /** Breathed out in the month. */
  readonly respired: number;
  readonly temperatureFactor: number;
  readonly moistureFactor: number;
  /** Deficit of water at its end, in mm, 0 or below. */
  readonly deficitMm: number;
}

/**
 * The carbon of a soil month by month, by the Rothamsted carbon model: five pools that rot at their
 * own rates, faster where it is warm, slower where it is dry or under plants. What is added comes in
 * at the month's end, after its rot. Fitted to mineral topsoil.
 *
 * @param pools carbon at the start: `dpm`, `rpm`, `bio`, `hum`, `iom`, each 0 to 1,000,000,000.
 * @param months one or more: `temperatureC`, `rainMm`, `panMm`, `covered`, `carbon`, `split`.
 * @param soil `clayPercent`; `depthCm`, default 23; `deficitMm` at the start, default none.
 * @returns for each month the pools at its end, and what drove it.
 * @throws ProblemError where a figure is missing, of another kind or out of range, or where the
 * shares of a split are not together 1 (`contradiction`).
 * @rule pool after a month = pool x exp(-a b c k / 12), a from the temperature, b from the deficit of water, c 0.6 under plants
 * @source rothc-2025
 * @example
 * const start = { dpm: 0.1533, rpm: 4.4852, bio: 0.6671, hum: 25.8576, iom: 2.7 };
 * const winter = { temperatureC: 3, rainMm: 60, panMm: 8 };
 * const [january] = rothcRun(start, [winter], { clayPercent: 23.4 });
 * Number(january.total.toFixed(3)) // => 33.816
 */
export function rothcRun(
  pools: RothcPools,
  months: readonly RothcMonthSpec[],
  soil: RothcSoil,
): readonly RothcState[] {
  const given = new Given();
  const start = poolsOf(given, pools);
  const plainMonths = given
    .list(months, ["months"], 1)
    .map((month, at) => monthOf(given, month, ["months", at + 1]));
  const { clay, mostMm, deficitMm } = soilOf(given, soil);
  given.done();
  return runMonths({ ...start, deficitMm }, plainMonths, { clay, mostMm });
}

type Path = readonly (string | number)[];

export function poolsOf(given: Given, pools: unknown): RothcPools {
  const row = given.fields(pools, ["pools"]);
  const pool = (key: string): number => given.plain(row[key], ["pools", key], carbonLimits);
  return {
    dpm: pool("dpm"),
    rpm: pool("rpm"),
    bio: pool("bio"),
    hum: pool("hum"),
    iom: pool("iom"),
  };
}

export type PlainMonth = Required<RothcMonthSpec>;

export function monthOf(given: Given, month: unknown, path: Path): PlainMonth {
  const row = given.fields(month, path);
  const plain = (key: string, bounds: { min: number; max: number }): number =>
    given.plain(row[key], [...path, key], bounds);
  const carbon =
    row.carbon === undefined ? 0 : given.plain(row.carbon, [...path, "carbon"], carbonLimits);
  return {
    temperatureC: plain("temperatureC", temperatureLimits),
    rainMm: plain("rainMm", { min: 0, max: 5000 }),
    panMm: plain("panMm", { min: 0, max: 2000 }),
    covered: given.oneOf(row.covered ?? true, [true, false], [...path, "covered"]),
    carbon,
    split:
      row.split === undefined ? rothcSplits.crop : splitOf(given, row.split, [...path, "split"]),
  };
}

function splitOf(given: Given, split: unknown, path: Path): RothcSplit {
  const row = given.fields(split, path);
  const part = (key: string): number => given.plain(row[key], [...path, key], shareLimits);
  const found = { dpm: part("dpm"), rpm: part("rpm"), hum: part("hum") };
  const sum = found.dpm + found.rpm + found.hum;
  if (given.clean && Math.abs(sum - 1) > 1e-9) {
    given.add({
      code: "contradiction",
      path,
      allowed: "shares that are together 1",
      received: `${found.dpm}, ${found.rpm}, ${found.hum}, together ${Number(sum.toPrecision(6))}`,
      remedy: "Give shares of the whole for dpm, rpm and hum.",
    });
  }
  return found;
}

export function soilOf(given: Given, soil: unknown) {
  const row = given.fields(soil, ["soil"]);
  const clay = given.plain(row.clayPercent, ["soil", "clayPercent"], { min: 0, max: 100 });
  const depthCm = given.plain(row.depthCm ?? 23, ["soil", "depthCm"], { min: 1, max: 100 });
  const deficitMm = given.plain(row.deficitMm ?? 0, ["soil", "deficitMm"], { min: -1000, max: 0 });
  return { clay, mostMm: rothcDeficit(clay, depthCm), deficitMm };
}

export function runMonths(
  start: RothcPools & { readonly deficitMm: number },
  months: readonly PlainMonth[],
  { clay, mostMm }: { readonly clay: number; readonly mostMm: number },
): readonly RothcState[] {
  const respiredRatio = rothcRespired(clay);
  let pools: RothcPools = start;
  let { deficitMm } = start;
  return months.map((month) => {
    deficitMm = nextDeficit(deficitMm, month, mostMm);
    const temperatureFactor = rothcTemperature(month.temperatureC);
    const moistureFactor = rothcMoisture(deficitMm, mostMm);
    const factor = temperatureFactor * moistureFactor * rothcCover(month.covered);
    const { respired, ...after } = rothcDecay(pools, { factor, respiredRatio });
    pools = rothcAdd(after, month.carbon, month.split);
    const total = rothcTotal(pools);
    return { ...pools, total, respired, temperatureFactor, moistureFactor, deficitMm };
  });
}
