import type { LedgerRow } from "./row.ts";

/** Compost's nutrients, the heap and mulch. */
export const rows: readonly LedgerRow[] = [
  {
    what: "1/4 to 1 in of compost a year",
    source: "osu-em9308",
    mark: "READ",
    checked: {
      file: "published/osu-em9308.test.ts",
      title: "dresses existing beds with 1/4 to 1 in each year",
    },
  },
  {
    what: "nitrogen for wood that is dug in",
    source: "osu-organic-matter",
    mark: "READ",
    checked: { file: "published/osu-organic-matter.test.ts", title: "6 lb of ammonium nitrate" },
  },
  {
    what: "need of vegetables, and four answers on fertiliser",
    source: "umd-fertilizer",
    mark: "READ",
    checked: {
      file: "published/umd-fertilizer.test.ts",
      title: "3.2 oz from 15-0-0: 21.33 oz, 1.33 lb",
    },
  },
  {
    what: "a cup of dry meal weighs 5 oz, of 10-10-10 8 oz",
    source: "umd-fertilizer",
    mark: "READ",
    leftOut: "measures of the kitchen; fertiliser is given by weight",
  },
  {
    what: "an inch meets 77 to 116 % of the need",
    source: "compost-calculations-sheet",
    mark: "DERIVED",
    checked: {
      file: "lib/compost/nitrogen-balance.test.ts",
      title: "an inch of compost meets 77 to 116 per cent of the need",
    },
  },
  {
    what: "release of a tenth and half as much each later year",
    source: "compost-calculations-sheet",
    mark: "DERIVED",
    checked: {
      file: "lib/compost/nutrient-supply.test.ts",
      title: "spread each year, free ever more",
    },
  },
  {
    what: "8, 7 and 3 % of the rest by year",
    source: "hartz-compost-nitrogen",
    mark: "READ-2nd",
    checked: {
      file: "lib/compost/nutrient-supply.test.ts",
      title: "of the rest: 5, then 7, then 3 per cent at the least",
    },
  },
  {
    what: "P2O5 of the mean compost, printed 1.34 where 1.352 follows",
    source: "calrecycle-composts",
    mark: "READ",
    checked: {
      file: "published/calrecycle-composts.test.ts",
      title: "P2O5 1.34, which 5,900 mg/kg",
    },
  },
  {
    what: "mean ratio 16.8 against 14.5",
    source: "calrecycle-composts",
    mark: "READ",
    checked: {
      file: "published/calrecycle-composts.test.ts",
      title: "the mean of C over N, 16.8, is not mean C over mean N",
    },
  },
  {
    what: "20 P are 45.8 P2O5, 20 K are 24 K2O",
    source: "nmsu-h120",
    mark: "READ",
    leftOut: "tables of ours are in P2O5 and K2O already",
  },
  {
    what: "conductivity by extract, phosphorus of 20 gardens, uptake in trials",
    source: "missouri-compost-test, umn-compost-2023 and others",
    mark: "READ",
    leftOut: "findings that the caution of overuse rests on; nothing is computed",
  },
  {
    what: "50 lb of hay with scraps and coffee: 34.7 to 1",
    source: "compost-handout",
    mark: "READ",
    checked: { file: "published/compost-handout.test.ts", title: "which is 34.7 to 1" },
  },
  {
    what: "leaves for grass to come to 60 % water",
    source: "cornell-compost-calc",
    mark: "READ-2nd",
    checked: {
      file: "published/cornell-compost-calc.test.ts",
      title: "10 kg of grass at 77 % take 6.8 kg of leaves at 35 % to come to 60 %",
    },
  },
  {
    what: "leaves for grass to come to 30 to 1",
    source: "cornell-compost-calc",
    mark: "from memory",
    checked: {
      file: "lib/compost/ratio-partner.test.ts",
      title: "10 kg of grass take 3.5 kg of leaves for 30 to 1",
    },
  },
  {
    what: "ratios averaged by volume, a wrong way",
    source: "several garden pages",
    mark: "READ",
    checked: {
      file: "lib/compost/heap-mix.test.ts",
      title: "is not the mean of the ratios by volume",
    },
  },
  {
    what: "size of a pile, yields of one keen home site",
    source: "home-composter-log and others",
    mark: "READ",
    leftOut: "one site's log; heapYield takes the published shares lost",
  },
  {
    what: "a finished yard of half a raw one dresses 162 sq ft",
    source: "composting-lab-reduction",
    mark: "DERIVED",
    checked: {
      file: "lib/compost/beds-dressed.test.ts",
      title: "are as many as its volume holds dressings",
    },
  },
  {
    what: "weeds under 0 to 30 cm of chips",
    source: "eulenberg-2012",
    mark: "DERIVED",
    checked: {
      file: "lib/mulch/weeds-left.test.ts",
      title: "fall by 0.158 in the logarithm for each centimetre",
    },
  },
  {
    what: "coarse mulch to 4 in, fine to 2 in",
    source: "uc-ipm-7441",
    mark: "READ",
    checked: { file: "published/uc-ipm-7441.test.ts", title: "coarse mulch lies up to 4 in deep" },
  },
  {
    what: "six mulches over two years",
    source: "uf-mulch-settling",
    mark: "READ",
    leftOut: "an order without figures in the part seen",
  },
  {
    what: "an inch of bark each year",
    source: "common practice",
    mark: "common practice",
    checked: {
      file: "lib/mulch/mulch-years.test.ts",
      title: "an inch of bark is renewed each year",
    },
  },
];
