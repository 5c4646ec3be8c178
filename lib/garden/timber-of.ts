import type { PriceLine } from "../cost/index.ts";
import type { Section } from "../lumber/index.ts";

/**
 * Says of a section without a timber which one it takes: the only one priced; of several the one
 * chosen. Undefined where the price list names none for it.
 */
export function timberOf(
  prices: readonly PriceLine[],
  choice: string,
): (section: Section) => string | undefined {
  const bySection = new Map<string, Set<string>>();
  for (const line of prices) {
    if (line.kind !== "board") continue;
    const timbers = bySection.get(line.section.name) ?? new Set();
    bySection.set(line.section.name, timbers.add(line.timber ?? ""));
  }
  return ({ name }) => {
    const timbers = bySection.get(name);
    if (timbers === undefined || timbers.has("")) return undefined;
    const [only] = timbers;
    return timbers.size === 1 ? only : choice;
  };
}

/** Whether a timber's name says that it was treated with a preservative. */
export function isTreated(timber: string | undefined): boolean {
  return timber !== undefined && /\btreated\b/.test(timber) && !/\bun-?treated\b/.test(timber);
}
