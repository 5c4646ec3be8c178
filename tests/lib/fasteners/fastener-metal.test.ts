import { describe, expect, it } from "vitest";
import { fastenerMetal } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

describe("fastenerMetal", () => {
  it("asks for hot-dip galvanised or stainless with copper-treated wood", () => {
    const metal = fastenerMetal({ treated: true });
    expect(metal.screws).toMatch(/A153.*stainless/);
    expect(metal.plates).toMatch(/G185.*A653/);
    expect(metal.never).toMatch(/electroplated or aluminium/);
  });

  it("asks for stainless in soil and near salt", () => {
    for (const place of ["in soil", "near salt"] as const) {
      expect(fastenerMetal({ treated: true, place }).screws).toMatch(/^stainless/);
      expect(fastenerMetal({ treated: false, place }).plates).toMatch(/^stainless/);
    }
  });

  it("refuses what it does not know", () => {
    expect(refusals(() => fastenerMetal(wrong(undefined)))).toEqual(["missing options"]);
    expect(refusals(() => fastenerMetal(wrong({})))).toEqual(["missing treated"]);
    expect(
      refusals(() => fastenerMetal({ treated: wrong("yes"), place: wrong("indoors") })),
    ).toEqual(["unknown treated", "unknown place"]);
  });
});
