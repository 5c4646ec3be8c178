import type { LedgerRow } from "./row.ts";

/** Volumes, coverage and bags. */
export const rows: readonly LedgerRow[] = [
  {
    what: "100 sq ft under 1 in of compost take 8 cu ft",
    source: "wsu-whatcom-compost",
    mark: "READ",
    checked: { file: "published/wsu-whatcom-compost.test.ts", title: "100 ft2 to 1 in take 8 ft3" },
  },
];
