import {
  areaDimension,
  cubicMetre,
  foot,
  lengthDimension,
  litre,
  quantity,
  squareMetre,
  times,
} from "../measure/index.ts";

// How far each kind of argument may go: one place, so that all calculations say the same.
const noLength = quantity(0, lengthDimension);

export const depthLimits = { min: noLength, max: times(20, foot) };
export const ringLimits = { min: noLength, max: times(10, foot) };
export const areaLimits = { min: quantity(0, areaDimension), max: times(10_000_000, squareMetre) };
export const bagLimits = { min: times(0.1, litre), max: times(1000, cubicMetre) };
