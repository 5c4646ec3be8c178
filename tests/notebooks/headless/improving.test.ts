import { describe, expect, it } from "vitest";
import { runJob } from "../../../notebooks/engine/headless/run-job.ts";
import type { LongWorkControl } from "../../../notebooks/engine/types/index.ts";
import { cell, fakeHost } from "../run/fake-host.ts";

describe("long work at the command line", () => {
  it("counts with its final result: what rests on it is worked out once", async () => {
    const controls: LongWorkControl[] = [];
    const host = fakeHost({
      plan: async (_, control) => {
        controls.push(control);
        for (const better of [13, 12, 11]) {
          control.improved?.(better);
          control.progress("proving");
          await new Promise((done) => setTimeout(done, 5));
        }
        return 10;
      },
    });
    const worked: unknown[] = [];
    const names = { ...host.names, worked: (value: unknown) => worked.push(value) };
    const text = cell("cuts", "plan(4)") + cell("waste pinned", "worked(cuts);\nreturn cuts + 1;");
    const printed = await runJob(
      {
        main: "a.md",
        shipped: true,
        documents: { "a.md": text },
        entered: {},
        troubles: [],
        tables: {},
        sets: {},
        cells: [],
        surroundings: { units: "us", today: "2026-04-25" },
        format: "text",
      },
      { ...host, names },
      new Promise(() => undefined),
    );
    expect(printed).toEqual({ out: "Waste: 11", err: "", code: 0 });
    expect(worked).toEqual([10]);
    expect(controls.map(({ improved }) => improved)).toEqual([undefined]);
  });
});
