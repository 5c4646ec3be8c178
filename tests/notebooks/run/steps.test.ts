import { describe, expect, it } from "vitest";
import { Call } from "../../../notebooks/engine/run/call.ts";
import { Steps } from "../../../notebooks/engine/run/steps.ts";

/** A call whose results the test gives. */
function call() {
  let answer: (value: unknown) => void = () => {};
  const made = new Call(
    () =>
      new Promise((resolve) => {
        answer = resolve;
      }),
  );
  return { made, answer: (value: unknown) => answer(value) };
}

const atOnce = () => Promise.resolve();

describe("the results of a call, one after another", () => {
  it("end with the final one, which comes once", async () => {
    const { made, answer } = call();
    const steps = new Steps(made, atOnce);
    const first = steps.next();
    made.improved(12);
    expect(await first).toEqual({ done: false, value: 12 });
    const second = steps.next();
    answer(9);
    expect(await second).toEqual({ done: false, value: 9 });
    expect(steps.ended).toBe(true);
    expect(await steps.next()).toEqual({ done: true, value: undefined });
  });

  it("are over when nobody wants more of them", async () => {
    const { made } = call();
    const steps = new Steps(made, atOnce);
    steps.return();
    made.improved(12);
    expect(await steps.next()).toEqual({ done: true, value: undefined });
  });

  it("leave what rests on them three times as long to be looked at as it took to work out", async () => {
    const waits: number[] = [];
    const busy = 120;
    const wait = async (ms: number) => {
      waits.push(ms);
    };
    const { made } = call();
    const steps = new Steps(made, wait);
    made.improved(12);
    await steps.next();
    const until = Date.now() + busy;
    while (Date.now() < until);
    made.improved(11);
    await steps.next();
    const paced = waits.slice(-2);
    expect(paced[0]).toBe(0);
    expect(paced[1]).toBeGreaterThanOrEqual(3 * busy);
    expect(paced[1]).toBeLessThan(20 * busy);
  });

  it("are only the final one where that comes at once", async () => {
    const rings: (() => void)[] = [];
    const { made, answer } = call();
    const steps = new Steps(made, () => new Promise((ring) => rings.push(ring)));
    const first = steps.next();
    made.improved(12);
    await new Promise((resolve) => setTimeout(resolve));
    answer(9);
    expect(await first).toEqual({ done: false, value: 9 });
    expect(rings).toHaveLength(1);
  });

  it("that come after the end count no more", async () => {
    const { made, answer } = call();
    made.improved(12);
    answer(9);
    await made.result;
    made.improved(3);
    expect([made.best, made.count]).toEqual([{ value: 12 }, 1]);
  });
});
