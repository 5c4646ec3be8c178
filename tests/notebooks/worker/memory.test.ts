import { describe, expect, it } from "vitest";
import { guardMemory } from "../../../notebooks/engine/worker/memory.ts";

const names =
  "ArrayBuffer Int8Array Uint8Array Uint8ClampedArray Int16Array Uint16Array Int32Array Uint32Array Float32Array Float64Array BigInt64Array BigUint64Array FinalizationRegistry";
const scope = Object.fromEntries(
  names.split(" ").map((name) => [name, (globalThis as Record<string, unknown>)[name]]),
) as unknown as typeof globalThis;
guardMemory(scope as unknown as Record<string, unknown>, 10_000_000);

const refused = "it takes more memory than a notebook has: 10 MB for all its typed arrays.";

describe("the limit to memory", () => {
  it.each<[string, () => unknown]>([
    ["one large array", () => new scope.Float64Array(2_000_000)],
    ["a large buffer", () => new scope.ArrayBuffer(20_000_000)],
    [
      "a buffer that may grow",
      () => Reflect.construct(scope.ArrayBuffer, [1, { maxByteLength: 2e7 }]),
    ],
    ["an array made of a long list", () => new scope.Uint8Array({ length: 20_000_000 })],
    ["many arrays", () => Array.from({ length: 20 }, () => new scope.Float64Array(100_000))],
    [
      "copies",
      () => {
        const one = new scope.Float64Array(100_000);
        return Array.from({ length: 20 }, () => one.slice());
      },
    ],
    [
      "arrays made of each other",
      () => {
        const one = new scope.Float64Array(100_000);
        return Array.from({ length: 20 }, () => one.map((x) => x + 1));
      },
    ],
  ])("refuses %s", (_, hoard) => {
    expect(hoard).toThrow(new RangeError(refused));
  });

  it("lets arrays be arrays", () => {
    const { Float64Array: Doubles } = scope;
    const some = Doubles.from([1, 2, 3]).map((x) => x * 2);
    expect([...some]).toEqual([2, 4, 6]);
    expect(some).toBeInstanceOf(Doubles);
    expect(some).toBeInstanceOf(Float64Array);
    expect(some.constructor).toBe(Doubles);
    expect([...new Doubles(some.buffer, 8, 1)]).toEqual([4]);
    class Own extends Doubles {}
    expect(new Own(2)).toBeInstanceOf(Own);
  });
});
