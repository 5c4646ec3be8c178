import type { LedgerRow } from "./row.ts";

/** How organic matter rots. */
export const rows: readonly LedgerRow[] = [
  {
    what: "temperature factors of the Rothamsted model",
    source: "rothc-2025",
    mark: "READ",
    checked: { file: "published/rothc-2025.test.ts", title: "the temperature's factor" },
  },
  {
    what: "deficit of water through a year, Table 2",
    source: "rothc-2025",
    mark: "READ",
    checked: {
      file: "published/rothc-2025.test.ts",
      title: "the deficit of water through a year, Table 2",
    },
  },
  {
    what: "equation 2 printed with 1.01 for 0.01, misprinted",
    source: "rothc-2025",
    mark: "READ",
    checked: {
      file: "published/rothc-2025.test.ts",
      title: "the formula as printed, with 1.01 for 0.01",
    },
  },
  {
    what: "a month worked out, section 2.2",
    source: "rothc-2025",
    mark: "READ",
    checked: { file: "published/rothc-2025.test.ts", title: "a month worked out, section 2.2" },
  },
  {
    what: "pools at rest of the program's example",
    source: "rothc-2025",
    mark: "READ",
    checked: {
      file: "published/rothc-2025.test.ts",
      title: "the pools at rest of the program's example",
    },
  },
  {
    what: "steady case of the two-pool model",
    source: "andren-katterer-1997",
    mark: "READ",
    checked: {
      file: "published/andren-katterer-1997.test.ts",
      title: "two pools, the paper's steady case",
    },
  },
  {
    what: "the other five treatments of the two-pool model",
    source: "andren-katterer-1997",
    mark: "READ",
    leftOut:
      "parameters only: their carbon after 20 years is our arithmetic, and the mass balance is a property",
  },
  {
    what: "what is left of composts after a year",
    source: "nmi-compost",
    mark: "READ",
    checked: {
      file: "published/nmi-compost.test.ts",
      title: "what is left of composts after a year",
    },
  },
  {
    what: "green compost 0.90 for 134 of 179, misprinted",
    source: "nmi-compost",
    mark: "READ",
    checked: {
      file: "published/nmi-compost.test.ts",
      title: "green compost: 179 kg, of which 134, printed as 0.90",
    },
  },
  {
    what: "humus of a loam in Picardy",
    source: "picardy-humus",
    mark: "READ",
    checked: { file: "published/picardy-humus.test.ts", title: "loses 1.5 t of 90 in a year" },
  },
  {
    what: "stable organic matter of a food-waste compost",
    source: "french-compost-sheet",
    mark: "READ",
    checked: {
      file: "published/french-compost-sheet.test.ts",
      title: "29 kg mineralised, 116 kg left",
    },
  },
  {
    what: "apparent ages from 1 to 14 years",
    source: "janssen-1984",
    mark: "READ",
    leftOut:
      "an abstract without figures of what is left; those of the equation are our arithmetic and tested as such",
  },
  {
    what: "fraction left by the recalled equation",
    source: "janssen-1984",
    mark: "DERIVED",
    checked: { file: "lib/decay/janssen.test.ts", title: "leaves less and less (DERIVED)" },
  },
  {
    what: "K1 of manures and the clay form of K2",
    source: "henin-dupuis",
    mark: "from memory",
    leftOut: "recalled only, and no answer of it was seen",
  },
  {
    what: "order of stability of growing media",
    source: "Horticulturae 2023, 9(12):1258",
    mark: "READ",
    leftOut: "an order without rates",
  },
  {
    what: "peat, k from its ratio of carbon to nitrogen",
    source: "vermeulen-hendriks-1996",
    mark: "READ-2nd",
    leftOut: "used for the range of peat's row; no worked answer",
  },
];
