/** Median and 95th percentile of measured times. */
export function spread(values: readonly number[]): { median: number; p95: number } {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { median: at(0.5), p95: at(0.95) };
}

export function ms(value: number): string {
  return value < 100 ? `${value.toFixed(1)} ms` : `${Math.round(value)} ms`;
}
