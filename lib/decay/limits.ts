import { quantity, timeDimension, times, year } from "../measure/index.ts";

// How far each kind of argument may go: one place, so that all calculations say the same.
export const spanLimits = { min: quantity(0, timeDimension), max: times(1000, year) };
export const carbonLimits = { min: 0, max: 1e9 };
export const rateLimits = { min: 0, max: 100 };
export const shareLimits = { min: 0, max: 1 };
export const temperatureLimits = { min: -60, max: 60 };

/** A span in years of 365 days. */
export const yearsOf = (si: number): number => si / year.si;
