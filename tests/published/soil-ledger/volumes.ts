import type { LedgerRow } from "./row.ts";

/** Volumes, coverage and bags. */
export const rows: readonly LedgerRow[] = [
  {
    what: "100 sq ft under 1 in of compost take 8 cu ft",
    source: "wsu-whatcom-compost",
    mark: "READ",
    checked: { file: "published/wsu-whatcom-compost.test.ts", title: "100 ft2 to 1 in take 8 ft3" },
  },
  {
    what: "8 cu ft are 12 five-gallon buckets",
    source: "wsu-whatcom-compost",
    mark: "READ",
    checked: { file: "published/wsu-whatcom-compost.test.ts", title: "8 ft3 are 12 buckets" },
  },
  {
    what: "100 sq ft to 3 in take 25 cu ft",
    source: "sequim-measure-column",
    mark: "READ",
    checked: {
      file: "published/sequim-measure-column.test.ts",
      title: "100 ft2 to 3 in take 25 ft3",
    },
  },
  {
    what: "a circle of 10 ft radius has 314 sq ft",
    source: "sequim-measure-column",
    mark: "READ",
    checked: {
      file: "published/sequim-measure-column.test.ts",
      title: "a circle of 10 ft radius has 314 ft2",
    },
  },
  {
    what: "4 cu yd on 1,000 sq ft tilled 6 to 8 in deep",
    source: "City of Greeley, Colorado, calculation sheet",
    mark: "READ",
    leftOut:
      "a rule of an ordinance without an answer to compare; its 1.296 in is our own arithmetic",
  },
  {
    what: "648 sq ft to 2 in take 4 cu yd",
    source: "lay-volume-pages",
    mark: "READ",
    checked: { file: "published/lay-volume-pages.test.ts", title: "648 ft2 to 2 in take 4 yd3" },
  },
  {
    what: "2,000 sq ft to 1/4 in take 1.6 cu yd",
    source: "trade-coverage-pages",
    mark: "READ",
    checked: {
      file: "published/trade-coverage-pages.test.ts",
      title: "2000 ft2 to 1/4 in are printed as 1.6 yd3",
    },
  },
  {
    what: "600 sq ft to 2 in take 3.7 cu yd",
    source: "trade-coverage-pages",
    mark: "READ",
    checked: {
      file: "published/trade-coverage-pages.test.ts",
      title: "600 ft2 to 2 in take 3.7 yd3",
    },
  },
  {
    what: "20 ft by 30 ft to 3 in take 150 cu ft",
    source: "lay-volume-pages",
    mark: "READ",
    checked: {
      file: "published/lay-volume-pages.test.ts",
      title: "20 ft x 30 ft to 3 in take 150 ft3, 5.56 yd3",
    },
  },
  {
    what: "4 ft by 8 ft beds 6 to 18 in deep",
    source: "lay-volume-pages",
    mark: "READ",
    checked: {
      file: "published/lay-volume-pages.test.ts",
      title: "of soil %d in deep take %s ft3",
    },
  },
  {
    what: "4 ft by 8 ft, 12 in deep: 1.18 cu yd on one page, misprinted",
    source: "lay-volume-pages",
    mark: "READ",
    checked: {
      file: "published/lay-volume-pages.test.ts",
      title: "and not 1.18 yd3, which another page prints",
    },
  },
  {
    what: "4 ft by 3 ft by 1.5 ft take 18 cu ft",
    source: "lay-volume-pages",
    mark: "READ",
    checked: {
      file: "published/lay-volume-pages.test.ts",
      title: "4 ft x 3 ft x 1.5 ft take 18 ft3",
    },
  },
  {
    what: "a box of 20 in by 12 in by 6 in",
    source: "lay-volume-pages",
    mark: "READ",
    checked: {
      file: "published/lay-volume-pages.test.ts",
      title: "a box of 20 in x 12 in x 6 in holds 0.83 ft3",
    },
  },
  {
    what: "a page that divides by 3 for 27, misprinted",
    source: "lay-volume-pages",
    mark: "READ",
    checked: {
      file: "published/lay-volume-pages.test.ts",
      title: "a page that divides cubic feet by 3 gives 10-2/3 yd3 for 32 ft3",
    },
  },
  {
    what: "what a cubic yard covers by depth",
    source: "trade-coverage-pages",
    mark: "READ",
    checked: {
      file: "published/trade-coverage-pages.test.ts",
      title: "a cubic yard covers at %d in %s ft2",
    },
  },
  {
    what: "bags that cover too little, misprinted",
    source: "trade-coverage-pages",
    mark: "READ",
    checked: {
      file: "published/trade-coverage-pages.test.ts",
      title: "do not cover %s ft2, as printed",
    },
  },
  {
    what: "120 sq ft at 3 in from a cubic yard, misprinted",
    source: "trade-coverage-pages",
    mark: "READ",
    checked: {
      file: "published/trade-coverage-pages.test.ts",
      title: "do not cover %s ft2, as printed",
    },
  },
  {
    what: "bags of 1, 2 and 3 cu ft to a cubic yard",
    source: "lay-bag-pages",
    mark: "READ",
    checked: { file: "published/lay-bag-pages.test.ts", title: "to a cubic yard (READ)" },
  },
  {
    what: "bags of 40 L to a cubic yard",
    source: "lay-bag-pages",
    mark: "READ",
    checked: { file: "published/lay-bag-pages.test.ts", title: "bags of 40 L: 19 to a cubic yard" },
  },
  {
    what: "a bale of peat covers 50 sq ft at 1 in",
    source: "lay-bag-pages",
    mark: "READ",
    checked: { file: "published/lay-bag-pages.test.ts", title: "a 3.8 ft3 bale of peat at %d in" },
  },
  {
    what: "a bag of 40 lb holds 0.75 or 1 cu ft",
    source: "lay-bag-pages",
    mark: "READ",
    checked: {
      file: "published/nrc-compost-guideline.test.ts",
      title: "a 40 lb bag of 1 ft3, and one of 0.75 ft3, lie within",
    },
  },
  {
    what: "the short factors 0.0031 and 0.003 for 1/324",
    source: "trade-coverage-pages",
    mark: "READ",
    leftOut: "rounded forms of a factor that is used exactly",
  },
  {
    what: "cubic foot and gallon",
    source: "kstate-soils-manual",
    mark: "READ",
    checked: { file: "published/kstate-soils-manual.test.ts", title: "a cubic foot is 7.48 gal" },
  },
  {
    what: "lb/cu ft and lb/cu yd in kg/m3",
    source: "soil-testing-manual",
    mark: "READ",
    checked: {
      file: "published/soil-testing-manual.test.ts",
      title: "lb/yd³ times 0.5932 is kg/m³",
    },
  },
  {
    what: "how much a bale of peat expands when fluffed",
    source: "arkansas-fsa6097",
    mark: "READ",
    leftOut: "a range without a worked answer; bales are bought as packed",
  },
];
