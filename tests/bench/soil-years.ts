import { join } from "node:path";
import { Worker } from "node:worker_threads";
import { out } from "../../build/root.ts";
import { bundleForNode } from "../../build/steps/bundle.ts";
import type { SoilBench } from "./soil-years-worker.ts";
import { ms, spread } from "./statistics.ts";

interface Answer {
  readonly ms: number;
  readonly unlike: number;
}

/**
 * Soil for 15 years by month with the uncertain rates drawn, in a worker: 20 beds, alike and not, and
 * what a bed costs in gardens of 200 and 2,000, ten kinds of beds in each.
 */
export async function soilYearsBench(): Promise<void> {
  console.log("soilYears: 15 years by month, in a worker thread");
  const file = join(out, "scripts/soil-years-worker.mjs");
  await bundleForNode("tests/bench/soil-years-worker.ts", file);
  const worker = new Worker(file);
  const ask = (asked: SoilBench): Promise<Answer> =>
    new Promise((resolve, reject) => {
      worker.removeAllListeners();
      worker.once("message", resolve);
      worker.once("error", reject);
      worker.postMessage(asked);
    });
  const measure = async (asked: SoilBench, runs: number): Promise<Answer> => {
    const times: number[] = [];
    let unlike = 0;
    for (let run = 0; run < runs; run += 1) {
      const answer = await ask(asked);
      times.push(answer.ms);
      unlike = answer.unlike;
    }
    return { ms: spread(times).median, unlike };
  };
  await measure({ beds: 20, unlike: 2, draws: 200 }, 3);
  for (const unlike of [1, 2, 20]) {
    const found = await measure({ beds: 20, unlike, draws: 1000 }, 5);
    console.log(`  20 beds, ${found.unlike} of them unlike, 1,000 draws: median ${ms(found.ms)}`);
  }
  const base = await measure({ beds: 20, unlike: 10, draws: 200 }, 5);
  for (const beds of [200, 2000]) {
    const found = await measure({ beds, unlike: 10, draws: 200 }, 5);
    const each = found.ms / beds / (base.ms / 20);
    console.log(
      `  ${beds} beds, 10 unlike, 200 draws: median ${ms(found.ms)}; a bed costs ${each.toFixed(3)} of what it costs at 20 beds`,
    );
  }
  const many = await measure({ beds: 200, unlike: 200, draws: 200 }, 2);
  const each = many.ms / 200 / (base.ms / 10);
  console.log(
    `  200 beds, all unlike, 200 draws: median ${ms(many.ms)}; each unlike one costs ${each.toFixed(2)} of what one of ten costs`,
  );
  await worker.terminate();
}
