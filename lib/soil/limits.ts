import {
  areaDimension,
  cubicMetre,
  foot,
  inch,
  kilogramPerCubicMetre,
  lengthDimension,
  litre,
  millimetre,
  quantity,
  squareCentimetre,
  squareMetre,
  times,
  volumeDimension,
} from "../measure/index.ts";

// How far each kind of argument may go: one place, so that all calculations say the same.
const noDepth = quantity(0, lengthDimension);
const mostArea = times(10_000_000, squareMetre);

export const depthLimits = { min: noDepth, max: times(20, foot) };
export const someDepth = { min: millimetre, max: times(20, foot) };
export const sideLimits = { min: times(4, inch), max: times(1000, foot) };
export const thicknessLimits = { min: noDepth, max: foot };
export const areaLimits = { min: quantity(0, areaDimension), max: mostArea };
export const someArea = { min: squareCentimetre, max: mostArea };
export const volumeLimits = {
  min: quantity(0, volumeDimension),
  max: times(1_000_000, cubicMetre),
};
export const bagLimits = { min: times(0.1, litre), max: times(1000, cubicMetre) };
export const liftedLimits = { min: times(0.1, litre), max: times(5, cubicMetre) };
export const densityLimits = {
  min: kilogramPerCubicMetre,
  max: times(5000, kilogramPerCubicMetre),
};
export const shareLimits = { min: 0, max: 0.9 };
export const partLimits = { min: 1e-6, max: 1e6 };
export const countLimits = { min: 1, max: 100_000 };
