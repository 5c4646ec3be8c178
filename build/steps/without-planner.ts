import type { Plugin } from "esbuild";

/** The modules of the functions that take long, and what each gives out. */
export const planners: Readonly<Record<string, readonly string[]>> = {
  "lumber/plan-boards": ["planBoards", "planBoardsAtYard"],
  "buying/plan-buying": ["planBuying"],
  "buying/compare-buying": ["compareBuying"],
  "garden/plan-garden-buying": ["planGardenBuying"],
  "garden/compare-garden-buying": ["compareGardenBuying"],
  "garden/plan-garden": ["planGarden"],
};

const standIn = (name: string) =>
  `export function ${name}() { throw new Error("${name} runs in the worker for long work."); }`;

/**
 * Leaves the planner of boards out of the room's bundle: cells call stand-ins for the functions that
 * take long, so the room need not carry what works them out.
 */
export const withoutPlanner: Plugin = {
  name: "without-planner",
  setup(build) {
    for (const [file, names] of Object.entries(planners)) {
      const filter = new RegExp(`lib/${file}\\.ts$`);
      build.onLoad({ filter }, () => ({ contents: names.map(standIn).join("\n"), loader: "js" }));
    }
  },
};
