import { describe, expect, it } from "vitest";
import { Sluice } from "../../../notebooks/engine/worker/sluice.ts";

/** A sluice with a clock of its own; sending takes `takes` milliseconds. */
function sluice(takes = 0) {
  const sent: number[] = [];
  let time = 0;
  const made = new Sluice<number>(
    (value) => {
      sent.push(value);
      time += takes;
    },
    { least: 100, now: () => time },
  );
  const pass = (ms: number) => {
    time += ms;
  };
  return { made, sent, pass };
}

describe("a sluice", () => {
  it("lets the first through at once, and of those held back the newest when its time has come", () => {
    const { made, sent, pass } = sluice();
    for (const value of [1, 2, 3]) made.offer(value);
    made.look();
    expect(sent).toEqual([1]);
    pass(100);
    made.look();
    made.look();
    expect(sent).toEqual([1, 3]);
  });

  it("sends nothing twice, and what is held back at once where that is asked for", () => {
    const { made, sent } = sluice();
    made.offer(1);
    made.flush();
    made.offer(2);
    made.flush();
    made.flush();
    expect(sent).toEqual([1, 2]);
  });

  it("gives large values more time: sending takes a tenth of it at most", () => {
    const { made, sent, pass } = sluice(40);
    made.offer(1);
    pass(399);
    made.offer(2);
    expect(sent).toEqual([1]);
    pass(1);
    made.look();
    expect(sent).toEqual([1, 2]);
  });
});
