// R. W. Day, "Soil Testing Manual", 2001, Appendix D: conversion factors.
import { describe, it } from "vitest";
import {
  amount,
  kilogramPerCubicMetre,
  poundPerCubicFoot,
  poundPerCubicYard,
} from "../../lib/index.ts";
import { published } from "./compare.ts";
import { knownDifference } from "./known-difference.ts";

describe("measure, Soil Testing Manual", () => {
  it("lb/ft³ times 16.0185 is kg/m³ (READ)", () => {
    published(amount(poundPerCubicFoot, kilogramPerCubicMetre), "16.0185");
  });

  it("lb/yd³ times 0.5932 is kg/m³ (READ), cut and not rounded", () => {
    const factor = amount(poundPerCubicYard, kilogramPerCubicMetre);
    knownDifference(factor, "0.5932", "0.593276 was cut off after four decimals");
    published(factor, "0.5932", 0.0001);
  });
});
