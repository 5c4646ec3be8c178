import { parentPort } from "node:worker_threads";
import { loadPublished } from "../../build/published.ts";
import { dataFiles } from "../../build/steps/made.ts";
import {
  type Bed,
  gardenSoilYears,
  inch,
  type RottingMaterial,
  readBeds,
  readCsv,
  times,
  toBed,
} from "../../lib/index.ts";

/** What the worker is asked: so many beds, so many of them unlike. */
export interface SoilBench {
  readonly beds: number;
  readonly unlike: number;
  readonly draws: number;
}

const materials = loadPublished(dataFiles()).materials as unknown as readonly RottingMaterial[];
const row = (name: string): RottingMaterial => {
  const found = materials.find(({ material }) => material === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};
const fill = [
  { material: row("topsoil"), share: 2 },
  { material: row("compost"), share: 1 },
];

function bedsFor({ beds, unlike }: SoilBench): readonly Bed[] {
  const read = readBeds(readCsv("bed,length,width\nA,8 ft,4 ft", "beds")).rows[0];
  if (!read) throw new Error("no bed");
  const wanted = times(9.25, inch);
  return Array.from({ length: beds }, (_, at) => {
    const depthNow = times(4 + (4 * (at % unlike)) / unlike, inch);
    return toBed({ ...read, bed: `${at + 1}`, soilDepth: wanted, depthNow });
  });
}

parentPort?.on("message", (asked: SoilBench) => {
  const beds = bedsFor(asked);
  const started = performance.now();
  const { unlike } = gardenSoilYears(beds, {
    fill,
    there: row("old bed soil"),
    springs: [{ material: row("compost"), depth: times(0.5, inch) }],
    draws: asked.draws,
  });
  parentPort?.postMessage({ ms: performance.now() - started, unlike });
});
