import { times, year } from "../../../lib/index.ts";
import { number, quantityOf, type Sizes, yesNo } from "./leaves.ts";
import { but, list, record, variant } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const fromNothing: Sizes = { zero: "fine" };
const perhaps: Sizes = { zero: "fine", optional: true };
const span = quantityOf(times(3, year), fromNothing);
const carbon = number(3, fromNothing);
const rate = number(0.2, perhaps);
const celsius = (sizes: Sizes = {}) => number(9, { zero: "fine", negative: "fine", ...sizes });

const pools = record({ dpm: carbon, rpm: carbon, bio: carbon, hum: carbon, iom: carbon });
const share = (good: number) => number(good, { zero: "contradiction", negative: "too-small" });
const month = record({
  temperatureC: celsius(),
  rainMm: carbon,
  panMm: carbon,
  covered: yesNo(true, { optional: true }),
  carbon: number(3, perhaps),
  split: but(record({ dpm: share(0.5), rpm: share(0.3), hum: share(0.2) }, { optional: true }), {
    ...variant("shares of a hundred", { dpm: 50, rpm: 30, hum: 20 }, "too-large"),
  }),
});
// A deficit is 0 or below; `negative` tries one of its kind.
const deficit = number(-5, { zero: "fine", negative: "fine", optional: true });
const soil = { clayPercent: number(20, fromNothing), depthCm: number(23, { optional: true }) };
const twelve = Array.from({ length: 12 }, () => month);

export const decayCases: FolderCases = {
  humusBalance: {
    takes: {
      span,
      options: record({
        start: carbon,
        added: number(2, perhaps),
        kept: number(0.3, perhaps),
        rate: number(0.02, fromNothing),
      }),
    },
  },
  icbm: {
    takes: {
      pools: record({ young: carbon, old: carbon }),
      span,
      options: record({
        input: number(0.2, perhaps),
        humified: number(0.125, fromNothing),
        climate: rate,
        youngRate: rate,
        oldRate: rate,
      }),
    },
  },
  janssenLeft: {
    takes: { span, options: record({ age: number(4), temperatureC: celsius({ optional: true }) }) },
  },
  janssenTemperature: { takes: { temperatureC: celsius() } },
  rothcAtRest: {
    takes: {
      year: list(twelve, { empty: "missing" }),
      soil: record({ ...soil, deficitMm: deficit, iom: number(3, perhaps) }),
    },
  },
  rothcRun: {
    takes: {
      pools,
      months: list([month, month], { empty: "missing" }),
      soil: record({ ...soil, deficitMm: deficit }),
    },
  },
  shareLeft: { takes: { rate: number(0.2, fromNothing), span } },
  yearlyRate: {
    takes: { share: number(0.9), span: quantityOf(times(3, year), { optional: true }) },
  },
};
