import { describe, expect, it } from "vitest";
import {
  dimensionName,
  foot,
  kilogram,
  readArea,
  readDensity,
  readDuration,
  readLength,
  readMass,
  readMoney,
  readVolume,
} from "../../../lib/index.ts";

const readers = [
  ["length", readLength, "8 ft", "8 lb"],
  ["area", readArea, "8 sq ft", "8 ft"],
  ["volume", readVolume, "8 cu ft", "8 sq ft"],
  ["mass", readMass, "8 lb", "8 h"],
  ["money", readMoney, "$8", "8 ft"],
  ["duration", readDuration, "8 h", "8 ft"],
  ["density", readDensity, "8 lb/ft3", "8 lb"],
] as const;

describe.each(readers)("the reader of %s", (kind, read, good, other) => {
  it("gives its kind", () => {
    const reading = read(good);
    expect(reading.ok && dimensionName(reading.value)).toBe(kind);
  });

  it("refuses other kinds and nothing, at its place", () => {
    const path = ["row", 2];
    const refusals = [read(other, { path }), read("", { path }), read("?", { path })];
    const codes = refusals.map((reading) => (reading.ok ? "" : reading.problem.code));
    expect(codes).toEqual(["wrong-unit", "missing", "unreadable"]);
    for (const reading of refusals) expect(reading.ok || reading.problem.path).toEqual(path);
  });
});

describe("options", () => {
  it("reach the reader", () => {
    expect(readLength("9 ft", { max: times8() }).ok).toBe(false);
    expect(readLength("8", { unit: "ft" }).ok).toBe(true);
    expect(readMass("1,5 kg", { decimal: ",", max: kilogram }).ok).toBe(false);
  });
});

function times8() {
  return { ...foot, si: 8 * foot.si };
}
