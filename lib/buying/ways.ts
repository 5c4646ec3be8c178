import type { YardTerms } from "../cost/index.ts";
import type { Way } from "./buying-plan.ts";

/** A yard that is bought at, and how the goods come. */
export interface YardWay {
  readonly terms: YardTerms;
  readonly way: Way;
}

/** Every way to choose among the yards: at each nothing is bought, or fetched, or all of it is brought. */
export function allWays(yards: readonly YardTerms[]): (readonly YardWay[])[] {
  let found: (readonly YardWay[])[] = [[]];
  for (const terms of yards) {
    const own: Way[] = terms.delivery === undefined ? ["fetched"] : ["fetched", "delivered"];
    found = found.flatMap((ways) => [ways, ...own.map((way) => [...ways, { terms, way }])]);
  }
  return found;
}

export const wayAt = (ways: readonly YardWay[], yard: string): YardWay | undefined =>
  ways.find(({ terms }) => terms.yard === yard);
