type Next<T> = (at: T) => Iterable<T>;

/** The shortest way from one thing to another, both included; undefined where there is none. */
export function shortestWay<T>(start: T, end: T, next: Next<T>): readonly T[] | undefined {
  return start === end ? [start] : search(start, end, next);
}

/** The shortest way from a thing back to itself, which begins and ends with it. */
export function wayRound<T>(start: T, next: Next<T>): readonly T[] | undefined {
  return search(start, start, next);
}

/** Breadth first. */
function search<T>(start: T, end: T, next: Next<T>): readonly T[] | undefined {
  const from = new Map<T, T>();
  const waiting: T[] = [start];
  for (const at of waiting) {
    for (const to of next(at)) {
      if (to === end) return [start, ...stepsTo(at, start, from), end];
      if (to === start || from.has(to)) continue;
      from.set(to, at);
      waiting.push(to);
    }
  }
  return undefined;
}

function stepsTo<T>(last: T, start: T, from: ReadonlyMap<T, T>): T[] {
  const steps: T[] = [];
  for (let at: T | undefined = last; at !== undefined && at !== start; at = from.get(at)) {
    steps.push(at);
  }
  return steps.reverse();
}
