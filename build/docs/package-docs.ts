import type { ReferenceName } from "../../notebooks/engine/types/index.ts";

const plain = { group: "packages", sources: [], throws: [], parameters: [] } as const;

/** What cells are handed besides the library: two packages whole, and what the page itself knows. */
export const packageDocs: readonly ReferenceName[] = [
  {
    ...plain,
    name: "Plot",
    what: "package",
    signature: "Plot: the package @observablehq/plot",
    summary:
      "Draws marks over scales from columns of numbers. Quantities are not numbers: give columns made with `inUnit`. A cell whose value is a plot shows it, set in this workbook's type and colours.",
    examples: [],
  },
  {
    ...plain,
    name: "aq",
    what: "package",
    signature: "aq: the package arquero",
    summary:
      "Tables with columns: filters, joins, sums by group. The arithmetic on quantities works inside its verbs too.",
    examples: [[{ code: 'aq.table({ bed: ["A", "B"], boards: [3, 4] }).numRows()', says: "2" }]],
  },
  {
    ...plain,
    name: "published",
    what: "package",
    signature: "published: the published tables, by name",
    summary:
      "Rows of the published tables, frozen: numbers with a unit are quantities, blank fields null. Each row names its source.",
    examples: [[{ code: "published.species.length > 0", says: "true" }]],
  },
  {
    ...plain,
    name: "units",
    what: "constant",
    signature: 'units: "us" | "metric"',
    summary:
      "Which units the reader sees figures in. A cell that names it runs again when they are switched; others are only printed again.",
    examples: [],
  },
  {
    ...plain,
    name: "today",
    what: "constant",
    signature: "today: CalendarDate",
    summary: "The day the notebook is read, as the page or the command line gives it.",
    examples: [],
  },
];
