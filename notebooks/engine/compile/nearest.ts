/** The known name most like an unknown one: at most a third of its letters, and two, different. */
export function nearestName(name: string, known: Iterable<string>): string | undefined {
  const most = Math.min(2, Math.floor((name.length + 1) / 3));
  let best: string | undefined;
  let bestDistance = most + 1;
  const low = name.toLowerCase();
  for (const other of known) {
    if (Math.abs(other.length - name.length) > most) continue;
    const distance = distanceOf(low, other.toLowerCase());
    if (distance < bestDistance) [best, bestDistance] = [other, distance];
  }
  return best;
}

/** Letters to put in, take out, change, or swap with the next (Damerau 1964, restricted form). */
function distanceOf(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const change = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, change);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) cost = Math.min(cost, (before[j - 2] ?? 0) + 1);
      row.push(cost);
    }
    [before, last] = [last, row];
  }
  return last[b.length] ?? 0;
}
