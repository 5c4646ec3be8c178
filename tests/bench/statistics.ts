/** Median, 95th percentile and largest of measured values. */
export function spread(values: readonly number[]): { median: number; p95: number; worst: number } {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { median: at(0.5), p95: at(0.95), worst: at(1) };
}

export function ms(value: number): string {
  return value < 100 ? `${value.toFixed(1)} ms` : `${Math.round(value)} ms`;
}

export const percent = (share: number, decimals = 1): string =>
  `${(100 * share).toFixed(decimals)} %`;

/** "median / worst", each as printed by the function given; a dash where there is nothing. */
export function medianAndWorst(
  values: readonly number[],
  print: (value: number) => string,
): string {
  if (values.length === 0) return "–";
  const { median, worst } = spread(values);
  return `${print(median)} / ${print(worst)}`;
}

/** Rows of cells in columns of even width, indented. */
export function columns(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, at) =>
    Math.max(...rows.map((row) => row[at]?.length ?? 0)),
  );
  return rows
    .map((row) => `  ${row.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join("  ")}`.trimEnd())
    .join("\n");
}
