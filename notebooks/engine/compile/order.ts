/** An order in which each stands after all it takes, and those that can't: they are in a circle. */
export interface Order<T> {
  readonly ordered: readonly T[];
  /** Members of circles only, not what merely waits for one. */
  readonly circular: ReadonlySet<T>;
}

interface Visit<T> {
  readonly node: T;
  readonly rest: Iterator<T>;
  readonly number: number;
  low: number;
}

/**
 * Depth first with lowest reachable numbers (Tarjan 1972): groups come out after all they take.
 * Without recursion, so that a chain of any length is put in order.
 */
export function orderOf<T>(nodes: Iterable<T>, takes: (node: T) => Iterable<T>): Order<T> {
  const ordered: T[] = [];
  const circular = new Set<T>();
  const visits = new Map<T, Visit<T>>();
  const open: T[] = [];
  const isOpen = new Set<T>();
  const enter = (node: T): Visit<T> => {
    const visit = {
      node,
      rest: takes(node)[Symbol.iterator](),
      number: visits.size,
      low: visits.size,
    };
    visits.set(node, visit);
    open.push(node);
    isOpen.add(node);
    return visit;
  };
  for (const root of nodes) {
    if (visits.has(root)) continue;
    const trail = [enter(root)];
    for (let visit = trail.at(-1); visit !== undefined; visit = trail.at(-1)) {
      const next = visit.rest.next();
      if (!next.done) {
        const known = visits.get(next.value);
        if (next.value === visit.node) circular.add(visit.node);
        if (known === undefined) trail.push(enter(next.value));
        else if (isOpen.has(next.value)) visit.low = Math.min(visit.low, known.number);
        continue;
      }
      trail.pop();
      const above = trail.at(-1);
      if (above) above.low = Math.min(above.low, visit.low);
      if (visit.low === visit.number) closeGroup(visit.node);
    }
  }
  return { ordered, circular };

  function closeGroup(first: T): void {
    const group = open.splice(open.lastIndexOf(first));
    for (const node of group) isOpen.delete(node);
    if (group.length > 1) for (const node of group) circular.add(node);
    ordered.push(...group.reverse());
  }
}
