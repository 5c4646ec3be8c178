import type { LongWorkControl } from "../../notebooks/engine/types/index.ts";
import { startLongWork } from "../../notebooks/engine/worker/long-work.ts";

// Stands in the worker for long work in place of the planner: it finds plans with one board less,
// one after another, as slowly and as deaf as the test asks.

interface Given {
  /** How many boards the best plan has; the first has three more. */
  readonly boards: number;
  /** What it does after the best but one. */
  readonly then: "ends" | "goes on" | "hangs" | "finds nothing";
}

/** How many times this worker was asked: a new worker begins at one. */
let asked = 0;

/** Works so long, deaf but for a pause every 20 ms. */
async function work(ms: number, { pause, signal }: LongWorkControl): Promise<void> {
  const until = performance.now() + ms;
  while (performance.now() < until) {
    const slice = performance.now() + 20;
    while (performance.now() < slice);
    await pause?.();
    if (signal.aborted) throw new Error("cancelled");
  }
}

startLongWork(
  () => ({
    async planBoards([given], control) {
      const { boards, then } = given as Given;
      asked += 1;
      if (then === "finds nothing") {
        control.progress("looking for a first plan");
        await work(60_000, control);
      }
      for (const more of [3, 2, 1]) {
        control.improved?.({ boards: boards + more, asked });
        control.progress(`proving that fewer than ${boards + more} will not do`, 1 / more);
        await work(500, control);
      }
      if (then === "goes on") await work(60_000, control);
      if (then === "hangs") for (;;);
      return { boards, asked };
    },
  }),
  () => undefined,
);
