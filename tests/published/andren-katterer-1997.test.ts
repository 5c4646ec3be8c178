import { describe, it } from "vitest";
import { icbm, year } from "../../lib/index.ts";
import { published } from "./compare.ts";

// Andrén and Kätterer 1997, Ecological Applications 7:1226-1236; parameters as a public implementation
// of the model prints them. kg of carbon for each m2 of topsoil.
const steady = { humified: 0.125, climate: 1, input: 0.2 };

describe("decay, two pools, the paper's steady case", () => {
  const { inTheEnd } = icbm({ young: 0.25, old: 4.16 }, year, steady);

  it("young 0.25 (READ)", () => {
    published(inTheEnd?.young ?? Number.NaN, "0.25");
  });

  it("old 4.16, which its rounded parameters give as 4.13 (READ)", () => {
    published(inTheEnd?.old ?? Number.NaN, "4.16", 0.03);
  });

  it("starts where it ends, so that a year changes hardly anything (READ)", () => {
    const after = icbm({ young: 0.25, old: 4.16 }, year, steady);
    published(after.young, "0.25");
    published(after.old, "4.16");
  });
});
