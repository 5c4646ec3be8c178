/** How far each kind of argument may go; one place, so that all of them say the same. */
export const depthLimits = { min: 0, max: 6.096, words: "a depth from 0 to 20 ft (6.096 m)" };
export const someDepth = { min: 0.001, max: 6.096, words: "a depth from 1 mm to 20 ft (6.096 m)" };
export const volumeLimits = { min: 0, max: 1e6, words: "a volume from 0 to 1,000,000 m3" };
export const bagLimits = { min: 1e-4, max: 1000, words: "a volume from 0.1 L to 1000 m3" };
export const areaLimits = { min: 0, max: 1e7, words: "an area from 0 to 10,000,000 m2" };
export const densityLimits = { min: 1, max: 5000, words: "a density from 1 to 5000 kg/m3" };
export const shareLimits = { min: 0, max: 0.9, words: "a share from 0 to 0.9" };
export const countLimits = { min: 1, max: 100_000, words: "a whole number from 1 to 100,000" };
export const someArea = { min: 1e-4, max: 1e7, words: "an area from 1 cm2 to 10,000,000 m2" };
