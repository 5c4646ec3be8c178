import { MessageChannel } from "node:worker_threads";
import { describe, expect, it } from "vitest";
import { turnGiver } from "../../../notebooks/engine/worker/turn.ts";

describe("a turn of the event loop", () => {
  it("lets messages be heard that came before, as nothing that only waits for promises does", async () => {
    for (const platform of [globalThis, { MessageChannel }] as const) {
      const { port1, port2 } = new MessageChannel();
      let heard = 0;
      port1.on("message", () => {
        heard += 1;
      });
      const turn = turnGiver(platform as Parameters<typeof turnGiver>[0]);
      port2.postMessage("stop");
      for (let n = 0; n < 100; n += 1) await Promise.resolve();
      expect(heard).toBe(0);
      for (let n = 0; n < 20 && heard === 0; n += 1) await turn();
      expect(heard).toBe(1);
      port1.close();
    }
  });

  it("is given to everybody who asks, in order", async () => {
    const turn = turnGiver({ MessageChannel } as unknown as Parameters<typeof turnGiver>[0]);
    const order: number[] = [];
    await Promise.all([1, 2, 3].map((n) => turn().then(() => order.push(n))));
    expect(order).toEqual([1, 2, 3]);
  });

  it("costs little: a thousand take less than a second", async () => {
    const turn = turnGiver({ MessageChannel } as unknown as Parameters<typeof turnGiver>[0]);
    const began = performance.now();
    for (let n = 0; n < 1_000; n += 1) await turn();
    expect(performance.now() - began).toBeLessThan(1_000);
  });

  it("is refused where nothing can give it", () => {
    expect(() => turnGiver({})).toThrow(/turn/);
  });
});
