import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { longWorkHere, longWorkNames, optionsFor } from "../../build/long-work.ts";
import { root } from "../../build/root.ts";
import { planners } from "../../build/steps/without-planner.ts";
import type { IntegerProgram, Solve } from "../../lib/index.ts";
import * as lib from "../../lib/index.ts";
import type { LongWorkControl } from "../../notebooks/engine/types/index.ts";

const program: IntegerProgram = { columns: [], rows: [], whole: false };

/** What of the options the session hands in is looked at here. */
interface Handed {
  readonly timber?: string;
  readonly signal: LongWorkControl["signal"];
  readonly solve: Solve;
  readonly remembered: unknown;
  readonly pause: () => Promise<void>;
  readonly improved?: (value: unknown) => void;
  readonly progress: (words: string, fraction?: number) => void;
}

function handed(choices: unknown, more: Partial<LongWorkControl> = {}) {
  const log: unknown[] = [];
  const solve: Solve = async () => {
    log.push("solves");
    return { state: "optimal", values: [], bound: 0, rowWorth: [] };
  };
  const turn = async () => {
    log.push("turn");
  };
  const control: LongWorkControl = {
    signal: { aborted: false, addEventListener: () => undefined },
    progress: (...said) => log.push(["progress", ...said]),
    ...more,
  };
  const remembered = new Map<string, never>();
  const options = optionsFor(choices, control, { solve, remembered, turn }) as Handed;
  return { log, options, control, remembered };
}

describe("the functions that take long", () => {
  it("are those of the list that the library has, and cells call no other apart", () => {
    expect(longWorkNames).toContain("planBoards");
    expect(longWorkNames.filter((name) => !(name in lib))).toEqual([]);
    const unused: Solve = async () => ({ state: "stopped", values: [], bound: 0, rowWorth: [] });
    expect(Object.keys(longWorkHere(unused))).toEqual(longWorkNames);
    const types = readFileSync(join(root, "build/cells/cell-names.d.ts"), "utf8");
    expect(longWorkNames.filter((name) => !types.includes(`| "${name}"`))).toEqual([]);
  });

  it("are handed a cell's choices, and what the session gives whatever a cell says", () => {
    const { options, control, remembered } = handed({ timber: "cedar", solve: 1, signal: 2 });
    expect(options.timber).toBe("cedar");
    expect(options.signal).toBe(control.signal);
    expect(options.remembered).toBe(remembered);
    expect(typeof options.solve).toBe("function");
  });

  it("tell their better results only where somebody takes them", () => {
    const better: unknown[] = [];
    handed(undefined, { improved: (value) => better.push(value) }).options.improved?.(12);
    expect(better).toEqual([12]);
    expect(Object.hasOwn(handed(undefined).options, "improved")).toBe(false);
  });

  it("give everybody a turn in a pause and before the solver, which hears nothing", async () => {
    const paused: unknown[] = [];
    const { log, options } = handed(undefined, {
      pause: async (before) => {
        paused.push(before);
      },
    });
    await options.pause();
    const solved = options.solve(program, {});
    expect(paused).toEqual([undefined, "uninterrupted"]);
    expect(log).toEqual([]);
    await solved;
    expect(log).toEqual(["solves"]);
  });

  it("pause by the event loop's own turn where nobody gives another", async () => {
    const { log, options } = handed(undefined);
    await options.pause();
    await options.solve(program, {});
    expect(log).toEqual(["turn", "turn", "solves"]);
  });
});

describe("the room's bundle", () => {
  it("leaves out just the functions that take long", () => {
    expect(Object.values(planners).flat().sort()).toEqual([...longWorkNames].sort());
  });
});
