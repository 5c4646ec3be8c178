import { describe, expect, it } from "vitest";
import { Watchdog } from "../../../notebooks/engine/page/watchdog.ts";

function dog() {
  let now = 0;
  let tick: (() => void) | undefined;
  const said: string[] = [];
  const watchdog = new Watchdog({
    ping: () => said.push("ping"),
    silent: () => said.push("silent"),
    back: () => said.push("back"),
    gone: () => said.push("gone"),
    now: () => now,
    every(_, call) {
      tick = call;
      return () => {
        tick = undefined;
      };
    },
  });
  watchdog.start();
  const pass = (milliseconds: number) => {
    for (const end = now + milliseconds; now < end; ) {
      now += 250;
      tick?.();
    }
  };
  const sleep = (milliseconds: number) => {
    now += milliseconds;
    tick?.();
  };
  return { watchdog, said, pass, sleep, runs: () => tick !== undefined };
}

describe("Watchdog", () => {
  it("reports a silence of two seconds, once", () => {
    const { said, pass } = dog();
    pass(2_000);
    expect(said).toEqual(["ping"]);
    pass(250);
    expect(said).toEqual(["ping", "silent"]);
    pass(5_000);
    expect(said).toEqual(["ping", "silent"]);
  });

  it("says when a sign comes after all", () => {
    const { watchdog, said, pass } = dog();
    pass(3_000);
    watchdog.sign();
    expect(said).toEqual(["ping", "silent", "back"]);
  });

  it("ends it after fifteen seconds without a sign, and stops watching", () => {
    const { said, pass, runs } = dog();
    pass(15_000);
    expect(said).not.toContain("gone");
    pass(250);
    expect(said.at(-1)).toBe("gone");
    expect(runs()).toBe(false);
  });

  it("is content while there are signs", () => {
    const { watchdog, said, pass } = dog();
    for (let second = 0; second < 30; second += 1) {
      pass(1_000);
      watchdog.sign();
    }
    expect(new Set(said)).toEqual(new Set(["ping"]));
  });

  it("does not take the machine's sleep for the room's silence", () => {
    const { said, pass, sleep } = dog();
    pass(500);
    sleep(8 * 3_600_000);
    expect(said).toEqual(["ping"]);
  });
});
