import { join } from "node:path";
import { describe, expect, it } from "vitest";
import * as lib from "../../lib/index.ts";
import { anythingGoes } from "./bad-cases/anything-goes.ts";
import { buyingCases } from "./bad-cases/buying.ts";
import { chanceCases } from "./bad-cases/chance.ts";
import { compostCases } from "./bad-cases/compost.ts";
import { costCases } from "./bad-cases/cost.ts";
import { decayCases } from "./bad-cases/decay.ts";
import { declaredArguments, untried } from "./bad-cases/declared.ts";
import { derivedCases } from "./bad-cases/derived.ts";
import { drawingCases } from "./bad-cases/drawing.ts";
import { fastenerCases } from "./bad-cases/fasteners.ts";
import { gardenCases } from "./bad-cases/garden.ts";
import { linerCases } from "./bad-cases/liner.ts";
import { lumberCases } from "./bad-cases/lumber.ts";
import { checkCases, measureCases } from "./bad-cases/measure.ts";
import { mulchCases } from "./bad-cases/mulch.ts";
import { oldSoilCases } from "./bad-cases/old-soil.ts";
import { operatorCases, quantityMaker } from "./bad-cases/operators.ts";
import { readerCases } from "./bad-cases/readers.ts";
import { safetyCases } from "./bad-cases/safety.ts";
import { soilCases } from "./bad-cases/soil.ts";
import { tableCases } from "./bad-cases/table.ts";
import { type FolderCases, faultsOf } from "./bad-cases/walk.ts";

const folders: Readonly<Record<string, FolderCases>> = {
  check: checkCases,
  measure: { ...measureCases, ...operatorCases, ...quantityMaker, ...readerCases },
  buying: buyingCases,
  chance: chanceCases,
  compost: compostCases,
  cost: costCases,
  decay: decayCases,
  drawing: drawingCases,
  fasteners: fastenerCases,
  garden: gardenCases,
  liner: linerCases,
  lumber: lumberCases,
  mulch: mulchCases,
  safety: safetyCases,
  soil: { ...soilCases, ...oldSoilCases },
  table: tableCases,
};

const functions = Object.entries(lib)
  .filter(([, value]) => typeof value === "function")
  .map(([name]) => name);
const covered = Object.values(folders).flatMap((cases) => Object.keys(cases));
const open = Object.keys(anythingGoes);

describe("bad input", () => {
  it("has cases for every function of the library, or a reason why none is bad", () => {
    const without = functions.filter((name) => !covered.includes(name) && !open.includes(name));
    expect(without).toEqual([]);
  });

  it("has cases for functions of the library alone, and once each", () => {
    const all = [...covered, ...open];
    expect(Object.keys(derivedCases).filter((name) => !covered.includes(name))).toEqual([]);
    expect(all.filter((name) => !functions.includes(name))).toEqual([]);
    expect(all.filter((name, at) => all.indexOf(name) !== at)).toEqual([]);
  });

  it("is tried in every argument and field that the types declare", () => {
    const declared = declaredArguments(join(import.meta.dirname, "../../lib/index.ts"));
    const missed = Object.values(folders).flatMap((cases) =>
      Object.entries(cases).flatMap(([name, given]) => {
        const all = [given, derivedCases[name] ?? []].flat();
        return untried(declared.get(name) ?? [], all).map((place) => `${name}: ${place}`);
      }),
    );
    expect(missed).toEqual([]);
  });

  for (const [folder, cases] of Object.entries(folders)) {
    describe(`of ${folder} is a named problem`, () => {
      it.each(Object.entries(cases))("%s", { timeout: 90_000 }, async (name, given) => {
        const all = [given, derivedCases[name] ?? []].flat();
        const faults = await Promise.all(all.map((one) => faultsOf(name, one)));
        expect(faults.flat()).toEqual([]);
      });
    });
  }
});
