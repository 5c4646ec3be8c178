import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amount, bedFill, foot, inch, layeredFill, times } from "../../../lib/index.ts";
import { bedOf, refusals, settling, wrong } from "./at-hand.ts";

const bed = bedOf(96, 48);
const inches = (n: number) => times(n, inch);

describe("layeredFill", () => {
  it("of one layer is a fill of its material", () => {
    const layered = layeredFill(bed, [{ material: settling(0.1), thickness: inches(9) }], {
      depthNow: inches(2),
      count: 3,
    });
    const plain = bedFill(bed, settling(0.1), {
      depth: inches(11),
      depthNow: inches(2),
      count: 3,
    });
    expect(layered.total.order.likely.si).toBeCloseTo(plain.order.likely.si, 9);
    expect(layered.total.area.si).toBeCloseTo(plain.area.si, 9);
    expect(layered.total.there.si).toBeCloseTo(plain.there.si, 9);
    expect(amount(layered.depth, inch)).toBeCloseTo(11, 9);
  });

  it("orders the same when a layer is split in two, and adds up layer by layer", () => {
    const part = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(part, part, fc.double({ min: 0, max: 0.8, noNaN: true }), (a, b, share) => {
        const material = settling(share);
        const layers = (...all: number[]) =>
          layeredFill(
            bed,
            all.map((n) => ({ material, thickness: inches(n) })),
          );
        const split = layers(a, b);
        expect(split.total.order.likely.si).toBeCloseTo(layers(a + b).total.order.likely.si, 9);
        const sum = split.layers.reduce((all, { fill }) => all + fill.order.high.si, 0);
        expect(split.total.order.high.si).toBeCloseTo(sum, 9);
      }),
    );
  });

  it("keeps the layers in their order", () => {
    const layers = ["chips", "soil", "compost"].map((name) => ({
      material: { ...settling(0.1), material: name },
      thickness: inches(2),
    }));
    expect(layeredFill(bed, layers).layers.map(({ material }) => material)).toEqual([
      "chips",
      "soil",
      "compost",
    ]);
  });

  it("refuses beds and layers that cannot be", () => {
    const layer = { material: settling(0.1), thickness: inches(4) };
    expect(refusals(() => layeredFill(bed, []))).toEqual(["missing layers"]);
    expect(refusals(() => layeredFill(bed, wrong(layer)))).toEqual(["unreadable layers"]);
    expect(refusals(() => layeredFill(bed, [layer, { ...layer, thickness: wrong(4) }]))).toEqual([
      "wrong-unit layers.2.thickness",
    ]);
    expect(refusals(() => layeredFill(bed, [layer], { depthNow: inches(-1), count: 0 }))).toEqual([
      "too-small depthNow",
      "too-small count",
    ]);
    const many = [layer, { ...layer, thickness: times(20, foot) }];
    expect(refusals(() => layeredFill(bed, many))).toContain("too-large depth");
    expect(refusals(() => layeredFill(wrong({ ...bed, width: 4 }), [layer]))).toEqual([
      "wrong-unit bed.width",
    ]);
    expect(refusals(() => layeredFill(bed, wrong([{ thickness: inches(4) }])))).toContain(
      "missing layers.1.material",
    );
  });
});
