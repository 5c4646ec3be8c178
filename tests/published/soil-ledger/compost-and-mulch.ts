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
    what: "8.00, 7.82 and 3.37 lb set free by year in one reckoning",
    source: "hartz-compost-nitrogen",
    mark: "READ-2nd",
    leftOut: "an answer whose first amount was not seen; the shares it comes from are checked",
  },
  {
    what: "5, 7 and 3 % of the rest by year at the least",
    source: "hartz-compost-nitrogen",
    mark: "READ-2nd",
    checked: {
      file: "lib/compost/nutrient-supply.test.ts",
      title: "of the rest: 5, then 7, then 3 per cent at the least",
    },
  },
  {
    what: "N, P2O5 and K2O of the mean compost",
    source: "calrecycle-composts",
    mark: "READ",
    checked: {
      file: "published/calrecycle-composts.test.ts",
      title: "P2O5 1.34 and K2O 1.36 per cent",
    },
  },
  {
    what: "its P2O5, printed 1.34 where 5,900 mg/kg of P make 1.352; its K2O from 1.13 % of K",
    source: "calrecycle-composts",
    mark: "READ",
    leftOut: "a known misprint; no function of ours turns P or K into oxides",
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
    what: "wanted conductivity by extract: 4.0, 2.5, 1.5 mmhos/cm",
    source: "missouri-compost-test",
    mark: "READ",
    checked: { file: "published/missouri-compost-test.test.ts", title: "is wanted below %s" },
  },
  {
    what: "phosphorus of 20 gardens: 27, 133, 244 ppm; 25 is very high",
    source: "umn-compost-2023",
    mark: "READ",
    leftOut: "findings that the caution of overuse rests on; nothing is computed",
  },
  {
    what: "compost by its nitrogen brings more P and K than crops need",
    source: "pnw-533",
    mark: "READ",
    leftOut: "said without figures; the caution of overuse says it",
  },
  {
    what: "salt of compost and depth of mixing set its rate",
    source: "CSU GardenNotes 243",
    mark: "READ",
    leftOut: "the table lies past the part that was seen",
  },
  {
    what: "nitrogen 0.5 to 2.5 %, organic 50 to 60 %, pH, salts of finished compost",
    source: "Clemson University, interpretation of a compost test",
    mark: "READ",
    leftOut: "ranges of a laboratory; our rows are the means of many composts",
  },
  {
    what: "solids 50 to 60 %, organic 30 to 70 % of finished compost",
    source: "Penn State, guide to analyses, as a trade page quotes it",
    mark: "READ-2nd",
    leftOut: "ranges; the row of compost lies inside them, nothing is worked out",
  },
  {
    what: "a label of 1-0.5-2; composted cow manure of 0.5-0.5-0.5",
    source: "NCDA, what a label says",
    mark: "READ",
    leftOut: "how labels are read; the row of composted manure takes the recalled grade",
  },
  {
    what: "standard rate of 2 lb of nitrogen for 1,000 sq ft",
    source: "csu-711",
    mark: "READ",
    checked: {
      file: "published/umd-fertilizer.test.ts",
      title: "2 lb for 1,000 sq ft are 0.2 lb, or 3.2 oz, for 100",
    },
  },
  {
    what: "other depths of compost: about an inch a year, 1 to 2 in, 4 to 6 in in new beds",
    source: "umn-compost-2023, marylandgrows 2019, community-garden soil page of Minneapolis",
    mark: "READ",
    leftOut: "advice without an answer; those that tables take are rows of compost-depths.csv",
  },
  {
    what: "carbon and nitrogen of ten inputs; four more by dry mass and moisture",
    source: "compost-handout, nraes-54-inputs",
    mark: "READ",
    leftOut: "rows of data/heap-materials.csv that heapMix weighs; no answer is printed with them",
  },
  {
    what: "C:N of twelve materials from a table of 1992",
    source: "NRAES-54, Table A.1",
    mark: "from memory",
    leftOut: "recalled only; a copy of a farm sheet with the same figures is used",
  },
  {
    what: "nitrogen, C:N, moisture and density of thirteen materials",
    source: "farm-compost-table",
    mark: "READ-2nd",
    leftOut: "rows of data/heap-materials.csv; turkey litter and legume hay have no such row",
  },
  {
    what: "25 to 30 to 1 and 50 to 60 % of water preferred",
    source: "nrcs-neh-637",
    mark: "READ-2nd",
    checked: {
      file: "lib/compost/heap-mix.test.ts",
      title: "of %f parts of carbon to one of nitrogen",
    },
  },
  {
    what: "wider bands that will do: 20 to 40 or 60 to 1, 40 to 65 % of water",
    source: "Cooperband 2002; Composting Handbook, 2nd edition, Table 4.2",
    mark: "READ-2nd",
    leftOut: "heapMix judges by the preferred band alone",
  },
  {
    what: "slow below 35 to 40 % of water, at a stand below 30 %",
    source: "Cornell, right mix",
    mark: "READ",
    leftOut: "a course of decay in a heap that nothing of ours follows",
  },
  {
    what: "one part of grass to three of leaves, or 2 lb of nitrogen to a yard of leaves",
    source: "Cornell, fact sheet 2",
    mark: "READ",
    leftOut: "a rule of thumb by volume, for materials whose weights are not given",
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
    what: "a pile of at least 3 ft each way, at most 5 by 5 ft",
    source: "Klickitat County, Washington",
    mark: "READ",
    leftOut: "a size to build to; nothing is worked out",
  },
  {
    what: "household scraps of 8.7 lb a week",
    source: "a study of three cities, 2018, as cited",
    mark: "READ-2nd",
    leftOut: "another household's; what goes on the heap is entered",
  },
  {
    what: "yields of one keen home site",
    source: "home-composter-log",
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
    what: "1 1/2 to 2 in of mulch keep nine tenths of the seeds from sprouting",
    source: "University of Idaho Extension, a column of 2019",
    mark: "READ",
    leftOut: "germination, where the published fit is of the weeds' mass; they are not one figure",
  },
  {
    what: "coarser and deeper bark weeds better; pH and nitrogen fall with depth",
    source: "Billeaud and Zajicek 1989",
    mark: "READ",
    leftOut: "an abstract without figures by depth",
  },
  {
    what: "150 days of control by 3 in of small bark nuggets in pots",
    source: "Richardson and others 2008, as cited",
    mark: "READ-2nd",
    leftOut: "one trial in pots; no function takes days of control",
  },
  {
    what: "mulch of beds 2 to 3 in, 3 to 6 in clear of trunks",
    source: "UF/IFAS guide; WSU Whatcom",
    mark: "READ",
    leftOut: "advice; keepOff takes its distances, nothing is worked out",
  },
  {
    what: "above 30 to 1 nitrogen is tied up, below 20 set free; on the surface hardly",
    source: "Clemson University; WSU FS160E",
    mark: "READ",
    leftOut: "limits that nitrogenTieUp says in words; no amounts are printed",
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
