// The Rothamsted carbon model in plain numbers, for inner loops: no checks. The functions beside this
// file read and check what people give.

/** Carbon in five pools, in any one unit for an area. */
export interface RothcPools {
  /** Decomposable plant material. */
  readonly dpm: number;
  /** Resistant plant material. */
  readonly rpm: number;
  /** Microbial biomass. */
  readonly bio: number;
  /** Humified. */
  readonly hum: number;
  /** Inert: never rots. */
  readonly iom: number;
}

/** Rates a year of the pools that rot. */
export const rothcRates = { dpm: 10, rpm: 0.3, bio: 0.66, hum: 0.02 } as const;

/** How much faster all goes at a month's mean temperature than at about 9.3 °C; 0 below -5 °C. */
export const rothcTemperature = (temperatureC: number): number =>
  temperatureC < -5 ? 0 : 47.91 / (1 + Math.exp(106.06 / (temperatureC + 18.27)));

/** Carbon dioxide over what stays in the soil (biomass and humus) of what rots, by clay in per cent. */
export const rothcRespired = (clayPercent: number): number =>
  1.67 * (1.85 + 1.6 * Math.exp(-0.0786 * clayPercent));

/** The greatest deficit of water, in mm and negative, of a soil so deep under plants. */
export const rothcDeficit = (clayPercent: number, depthCm: number): number =>
  (-(20 + 1.3 * clayPercent - 0.01 * clayPercent ** 2) * depthCm) / 23;

/** Shares in which carbon comes in. */
export interface RothcSplit {
  readonly dpm: number;
  readonly rpm: number;
  readonly hum: number;
}

/** From crops and improved grass, from rough grass and scrub, from trees, and farmyard manure. */
export const rothcSplits = {
  crop: { dpm: 1.44 / 2.44, rpm: 1 / 2.44, hum: 0 },
  scrub: { dpm: 0.67 / 1.67, rpm: 1 / 1.67, hum: 0 },
  wood: { dpm: 0.25 / 1.25, rpm: 1 / 1.25, hum: 0 },
  manure: { dpm: 0.49, rpm: 0.49, hum: 0.02 },
} as const satisfies Readonly<Record<string, RothcSplit>>;

/** What drives one month: all factors of the weather multiplied, and carbon dioxide over what stays. */
export interface RothcMonth {
  readonly factor: number;
  readonly respiredRatio: number;
}

/** A month's end, before anything is added. */
export interface RothcAfter extends RothcPools {
  readonly respired: number;
}

// What stays is 46 parts biomass to 54 parts humus.
const toBio = 0.46;

/** One month of rot. */
export function rothcDecay(pools: RothcPools, { factor, respiredRatio }: RothcMonth): RothcAfter {
  const lost = (pool: number, rate: number): number => -pool * Math.expm1((-factor * rate) / 12);
  const dpm = lost(pools.dpm, rothcRates.dpm);
  const rpm = lost(pools.rpm, rothcRates.rpm);
  const bio = lost(pools.bio, rothcRates.bio);
  const hum = lost(pools.hum, rothcRates.hum);
  const all = dpm + rpm + bio + hum;
  const stays = all / (respiredRatio + 1);
  return {
    dpm: pools.dpm - dpm,
    rpm: pools.rpm - rpm,
    bio: pools.bio - bio + toBio * stays,
    hum: pools.hum - hum + (1 - toBio) * stays,
    iom: pools.iom,
    respired: all - stays,
  };
}

/** Carbon that comes in at a month's end. */
export function rothcAdd(pools: RothcPools, carbon: number, split: RothcSplit): RothcPools {
  return {
    dpm: pools.dpm + carbon * split.dpm,
    rpm: pools.rpm + carbon * split.rpm,
    bio: pools.bio,
    hum: pools.hum + carbon * split.hum,
    iom: pools.iom,
  };
}

export const rothcTotal = ({ dpm, rpm, bio, hum, iom }: RothcPools): number =>
  dpm + rpm + bio + hum + iom;

/** Rain and open-pan evaporation of a month, in mm, and whether plants cover the soil. */
export interface RothcWeather {
  readonly rainMm: number;
  readonly panMm: number;
  readonly covered: boolean;
}

/** The deficit of water at a month's end, in mm and negative, from that at its beginning. */
export function nextDeficit(
  deficitMm: number,
  { rainMm, panMm, covered }: RothcWeather,
  mostMm: number,
): number {
  const change = rainMm - 0.75 * panMm;
  // Bare soil dries no further than this; what plants have dried stays dry.
  const least = covered ? mostMm : Math.min(mostMm / 1.8, deficitMm);
  return Math.min(0, Math.max(deficitMm + change, least));
}

/** How much slower all goes in a soil so dry. */
export function rothcMoisture(deficitMm: number, mostMm: number): number {
  const from = 0.444 * mostMm;
  if (deficitMm > from || mostMm === 0) return 1;
  return Math.max(0.2, 0.2 + (0.8 * (mostMm - deficitMm)) / (mostMm - from));
}

/** Plants on the soil slow it down. */
export const rothcCover = (covered: boolean): number => (covered ? 0.6 : 1);
