/** Names that end in numbers, joined where the numbers follow each other: "B1–B4", "B9". */
export function namesInRuns(names: readonly string[]): readonly string[] {
  const runs: { first: string; last: string; stem: string; at: number }[] = [];
  for (const name of names) {
    const parts = /^(.*?)(\d+)$/.exec(name);
    const stem = parts?.[1] ?? name;
    const at = parts === null ? Number.NaN : Number(parts[2]);
    const run = runs.at(-1);
    if (run !== undefined && run.stem === stem && run.at + 1 === at) {
      run.last = name;
      run.at = at;
    } else runs.push({ first: name, last: name, stem, at });
  }
  return runs.map(({ first, last }) => (first === last ? first : `${first}–${last}`));
}

/** Names with how often each comes: "A-1 side, A-2 side (2)". */
export function namesWithCounts(names: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => (count === 1 ? name : `${name} (${count})`)).join(", ");
}
