import { gzipSync } from "node:zlib";
import { beforeAll, describe, expect, it } from "vitest";
import { exampleSteps, forCells } from "../../build/docs/example-steps.ts";
import { packReference, unpackReference } from "../../build/docs/pack.ts";
import { longWorkNames } from "../../build/long-work.ts";
import { reference } from "../../build/steps/made.ts";
import type { Reference, ReferenceName } from "../../notebooks/engine/types/index.ts";

let made: Reference;
const named = (name: string): ReferenceName => {
  const found = made.names.find((one) => one.name === name);
  if (!found) throw new Error(`${name} is not in the reference`);
  return found;
};
beforeAll(() => {
  made = reference();
}, 60_000);

describe("the reference made while building", () => {
  it("has what functions take, their options with help, and what comes back", () => {
    const { parameters, returns, sources } = named("bedFill");
    expect(parameters.map(({ name }) => name)).toEqual(["bed", "material", "options"]);
    const options = parameters[2]?.fields ?? [];
    expect(options.find(({ name }) => name === "depth")).toMatchObject({ type: "Length" });
    expect(options.find(({ name }) => name === "count")).toMatchObject({ optional: true });
    expect(options.every(({ help }) => (help ?? "") !== "")).toBe(true);
    expect(returns?.fields?.map(({ name }) => name)).toContain("order");
    expect(sources).toEqual(["common practice"]);
  });

  it("calls what takes long as cells call it: without solver, progress or signal", () => {
    const { signature, parameters, long, examples } = named("planBoards");
    expect(signature).toBe(
      "planBoards(problem: BoardProblem, options?: PlanOptions): Promise<BoardPlan>",
    );
    expect(parameters[1]?.fields?.map(({ name }) => name)).toEqual(["timber", "seconds"]);
    expect(JSON.stringify(examples)).not.toContain("solve");
    expect(long).toBe(true);
    const marked = made.names.filter((one) => one.long).map(({ name }) => name);
    expect(marked.sort()).toEqual([...longWorkNames].sort());
  });

  it("has the makers of entries, the units, the published tables, the packages", () => {
    expect(named("lengthEntry")).toMatchObject({ what: "entry", group: "entries" });
    expect(named("lengthEntry").parameters[1]?.fields?.map(({ name }) => name)).toContain("max");
    expect(named("inch")).toMatchObject({ what: "constant", signature: "inch: Length" });
    expect(named("published.species").what).toBe("table");
    expect(named("published.species").sources.length).toBeGreaterThan(0);
    const columns = named("published.bagSizes").fields ?? [];
    expect(columns.find(({ name }) => name === "size")?.type).toBe("quantity in ft3");
    for (const name of ["Plot", "aq", "published"]) expect(named(name).what).toBe("package");
  });

  it("names every group that a name is of, and no type as a path of files", () => {
    const groups = new Set(made.groups.map(({ name }) => name));
    expect(made.names.filter(({ group }) => !groups.has(group))).toEqual([]);
    expect(JSON.stringify(made)).not.toMatch(/import\(/);
  });

  it("is small, and reads back as it was", () => {
    const packed = packReference(made);
    // Fetched when it is asked for: so much for each of the library's names.
    expect(gzipSync(packed).length).toBeLessThan(320 * made.names.length);
    expect(unpackReference(packed)).toEqual(made);
  });
});

describe("an example", () => {
  it("is its statements, with what each says it gives", () => {
    expect(exampleSteps("const a = {\n  b: 1,\n};\na.b // => 1\nplus(1, 2); // => 3")).toEqual([
      { code: "const a = {\n  b: 1,\n}" },
      { code: "a.b", says: "1" },
      { code: "plus(1, 2)", says: "3" },
    ]);
  });

  it("hands no solver in where cells run it", () => {
    const steps = exampleSteps(
      "const solve = async () => ({})\nconst plan = await planBoards(p, { solve })\nawait planBoardsAtYard(p, { solve, yard: 1 })",
    );
    expect(forCells(steps).map(({ code }) => code)).toEqual([
      "const plan = await planBoards(p)",
      "await planBoardsAtYard(p, { yard: 1 })",
    ]);
  });
});
