import {
  areaDimension,
  cubicMetre,
  foot,
  kilogram,
  kilogramPerCubicMetre,
  lengthDimension,
  litre,
  massDimension,
  quantity,
  squareMetre,
  times,
  volumeDimension,
} from "../measure/index.ts";

// How far each kind of argument may go: one place, so that all calculations say the same.
export const depthLimits = { min: quantity(0, lengthDimension), max: times(20, foot) };
export const areaLimits = { min: quantity(0, areaDimension), max: times(10_000_000, squareMetre) };
export const volumeLimits = {
  min: quantity(0, volumeDimension),
  max: times(1_000_000, cubicMetre),
};
export const bagLimits = { min: times(0.1, litre), max: times(1000, cubicMetre) };
export const massLimits = { min: quantity(0, massDimension), max: times(1_000_000, kilogram) };
export const densityLimits = {
  min: kilogramPerCubicMetre,
  max: times(5000, kilogramPerCubicMetre),
};
export const shareLimits = { min: 0, max: 1 };
