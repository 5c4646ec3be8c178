/** How many published checks a trade must have; a check counts where its title says READ or READ-2nd. */
const least: Readonly<Record<string, number>> = {
  measure: 5,
  lumber: 5,
  fasteners: 5,
  soil: 5,
  decay: 5,
  compost: 5,
  mulch: 5,
};
const leastInAll = 60;

export interface TestFile {
  readonly name: string;
  readonly status: string;
  readonly assertionResults: readonly {
    readonly status: string;
    readonly ancestorTitles: readonly string[];
    readonly title: string;
  }[];
}

/**
 * Counts the passed checks of `tests/published` that a publication backs, by trade: the word before
 * the comma in the title of their group. Gives what is too few, in words.
 */
export function countPublished(files: readonly TestFile[]): {
  readonly line: string;
  readonly missing: readonly string[];
} {
  const counts = new Map<string, number>();
  for (const { name, assertionResults } of files) {
    if (!name.includes("tests/published/")) continue;
    for (const { status, ancestorTitles, title } of assertionResults) {
      const words = [...ancestorTitles, title].join(" ");
      if (status !== "passed" || !/\bREAD(-2nd)?\b/.test(words)) continue;
      const [trade = ""] = (ancestorTitles[0] ?? "").split(",");
      counts.set(trade, (counts.get(trade) ?? 0) + 1);
    }
  }
  const all = [...counts.values()].reduce((sum, count) => sum + count, 0);
  const short = Object.entries(least)
    .filter(([trade, count]) => (counts.get(trade) ?? 0) < count)
    .map(([trade, count]) => `${trade} has fewer than ${count} published checks`);
  const each = [...counts].sort().map(([trade, count]) => `${trade} ${count}`);
  return {
    line: `published checks: ${all} (${each.join(", ")})`,
    missing: all < leastInAll ? [...short, `fewer than ${leastInAll} in all`] : short,
  };
}
