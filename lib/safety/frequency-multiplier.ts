// NIOSH publication 94-110 (1994, revised 2021), Table 5, p. 15. Columns: up to 1 h, up to 2 h, up
// to 8 h, each with the hands starting under 30 in (75 cm), then at or over it.
const rows: readonly (readonly [liftsPerMinute: number, ...multipliers: number[]])[] = [
  [0.2, 1.0, 1.0, 0.95, 0.95, 0.85, 0.85],
  [0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81],
  [1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75],
  [2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65],
  [3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55],
  [4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45],
  [5, 0.8, 0.8, 0.6, 0.6, 0.35, 0.35],
  [6, 0.75, 0.75, 0.5, 0.5, 0.27, 0.27],
  [7, 0.7, 0.7, 0.42, 0.42, 0.22, 0.22],
  [8, 0.6, 0.6, 0.35, 0.35, 0.18, 0.18],
  [9, 0.52, 0.52, 0.3, 0.3, 0, 0.15],
  [10, 0.45, 0.45, 0.26, 0.26, 0, 0.13],
  [11, 0.41, 0.41, 0, 0.23, 0, 0],
  [12, 0.37, 0.37, 0, 0.21, 0, 0],
  [13, 0, 0.34, 0, 0, 0, 0],
  [14, 0, 0.31, 0, 0, 0, 0],
  [15, 0, 0.28, 0, 0, 0, 0],
];

/** How long the lifting goes on before an equal or shorter rest. */
export type LiftDuration = "up to 1 h" | "up to 2 h" | "up to 8 h";

/** The share of the limit left at this pace, between rows in a straight line; 0 past the table. */
export function frequencyMultiplier(
  liftsPerMinute: number,
  duration: LiftDuration,
  startsHigh: boolean,
): number {
  const column =
    { "up to 1 h": 1, "up to 2 h": 3, "up to 8 h": 5 }[duration] + (startsHigh ? 1 : 0);
  const at = rows.findIndex(([lifts]) => lifts >= liftsPerMinute - 1e-9);
  if (at < 0) return 0;
  const upper = rows[at];
  const lower = rows[at - 1];
  const above = upper?.[column] ?? 0;
  if (lower === undefined || upper === undefined) return above;
  const below = lower[column] ?? 0;
  const along = (liftsPerMinute - lower[0]) / (upper[0] - lower[0]);
  return below + (above - below) * Math.min(along, 1);
}
