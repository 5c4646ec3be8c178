import { describe, expect, it } from "vitest";
import { buriedLines, gardenCautions, neverBurn } from "../../../lib/index.ts";

describe("gardenCautions(results)", () => {
  it("has each kind once, with all that called for it, each once", () => {
    const cautions = gardenCautions([
      [neverBurn({ because: "A" }), buriedLines()],
      { cautions: [neverBurn({ because: "B" }), neverBurn({ because: "A" })] },
    ]);
    expect(cautions.map(({ id, because }) => [id, because])).toEqual([
      ["never-burn", "A; B"],
      ["buried-lines", undefined],
    ]);
  });

  it("is nothing for nothing", () => {
    expect(gardenCautions([])).toEqual([]);
  });
});
