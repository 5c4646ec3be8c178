import { beforeAll, describe, expect, it } from "vitest";
import { aq } from "../../../../build/arquero.ts";
import { highsSolver } from "../../../../build/highs-solver.ts";
import { makeHost } from "../../../../build/host.ts";
import { longWorkHere } from "../../../../build/long-work.ts";
import { dataFiles, reference } from "../../../../build/steps/made.ts";
import { compileNotebook } from "../../../../notebooks/engine/compile/index.ts";
import {
  exampleNotebook,
  exampleResults,
  isLong,
  type NumberedExample,
  resultSteps,
} from "../../../../notebooks/engine/page/reference/example-notebook.ts";
import { createSession } from "../../../../notebooks/engine/run/index.ts";
import type { CellId, CellState } from "../../../../notebooks/engine/types/index.ts";

/** Works examples out as cells, in this process; gives the cells' states. */
async function work(examples: readonly NumberedExample[]): Promise<ReadonlyMap<CellId, CellState>> {
  const work = longWorkHere(await highsSolver());
  const host = makeHost({
    longWork: (name) => (given, control) => {
      const known = work[name];
      if (!known) throw new TypeError(name);
      return known(given, control);
    },
    data: dataFiles(),
    extras: { aq, Plot: {} },
  });
  const notebook = exampleNotebook(examples);
  expect(notebook.problems).toEqual([]);
  const session = createSession({
    host,
    program: compileNotebook({
      main: notebook.file,
      documents: new Map([[notebook.file, notebook]]),
      names: new Set(Object.keys(host.names)),
    }),
    surroundings: { units: "us", today: "2026-04-25" },
    strict: true,
    improving: false,
  });
  await session.done();
  const states = new Map(
    session.outline.flatMap(({ id }) => {
      const state = session.state(id);
      return state ? [[id, state] as const] : [];
    }),
  );
  session.dispose();
  return states;
}

describe("an example as cells", () => {
  it("has a result for each step that says one", async () => {
    const example = {
      number: 3,
      steps: [
        { code: "const side = times(8, foot)" },
        { code: "times(side, 2)", says: "16 ft" },
        { code: "({ side })", says: '{"side":"9 ft"}' },
      ],
    };
    const found = exampleResults(example, await work([example]));
    expect(found?.results.get(1)?.agrees).toBe(true);
    expect(found?.results.get(1)?.shown.kind).toBe("figure");
    expect(found?.results.get(2)).toMatchObject({ stated: '{"side":"8 ft"}', agrees: false });
  });

  it("shows the last step's where none says one", () => {
    expect(resultSteps([{ code: "const a = 1" }, { code: "a" }])).toEqual([1]);
    expect(resultSteps([])).toEqual([]);
  });

  it("says why it could not be worked out", async () => {
    const example = { number: 1, steps: [{ code: "plus(foot, litre)", says: "?" }] };
    const found = exampleResults(example, await work([example]));
    expect(found?.failed).toMatch(/length/);
  });
});

describe("the examples of the reference", () => {
  let examples: readonly (NumberedExample & { readonly name: string })[] = [];
  let states: ReadonlyMap<CellId, CellState> = new Map();
  beforeAll(async () => {
    const all = reference().names.flatMap(({ name, examples: own }) =>
      own.map((steps) => ({ name, steps })),
    );
    examples = all.map((example, number) => ({ ...example, number }));
    states = await work(examples);
  }, 120_000);

  it("all give in cells what their comments say", () => {
    expect(examples.length).toBeGreaterThan(200);
    const wrong = examples.flatMap((example) => {
      const found = exampleResults(example, states);
      if (!found) return [`${example.name}: nothing came of it`];
      if (found.failed !== undefined) return [`${example.name}: ${found.failed}`];
      return [...found.results]
        .filter(([, { agrees }]) => !agrees)
        .map(([at, { stated }]) => `${example.name}: ${stated} ≠ ${example.steps[at]?.says}`);
    });
    expect(wrong).toEqual([]);
  });

  it("are long where they call what runs apart", () => {
    const { names } = reference();
    const long = examples.filter(({ steps }) => isLong(steps, names)).map(({ name }) => name);
    expect(long).toContain("planBoards");
    expect(long).toContain("gardenBill");
    expect(long).not.toContain("settledVolume");
  });
});
