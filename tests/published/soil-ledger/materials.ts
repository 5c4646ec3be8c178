import type { LedgerRow } from "./row.ts";

/** What materials weigh and what of them is organic; mixes. */
export const rows: readonly LedgerRow[] = [
  {
    what: "weights of earth, sand and chips by the cubic yard",
    source: "calrecycle-calculations",
    mark: "READ",
    checked: {
      file: "published/calrecycle-calculations.test.ts",
      title: "earth, loose and dry, 2100 lb",
    },
  },
  {
    what: "finished compost weighs 1,000 to 1,600 lb a cubic yard",
    source: "nrc-compost-guideline",
    mark: "READ-2nd",
    checked: {
      file: "published/nrc-compost-guideline.test.ts",
      title: "a cubic yard of finished compost weighs 1000 to 1600 lb",
    },
  },
  {
    what: "home compost of 0.668 kg a litre",
    source: "home-composter-log",
    mark: "READ",
    checked: {
      file: "published/nrc-compost-guideline.test.ts",
      title: "home compost of 0.668 kg a litre lies within",
    },
  },
  {
    what: "perlite by the cubic foot",
    source: "perlite-institute-handbook",
    mark: "READ",
    checked: {
      file: "published/perlite-institute-handbook.test.ts",
      title: "dry perlite weighs 5.1 to 8.6 lb/ft3",
    },
  },
  {
    what: "peat moss at 6.5 lb a cubic yard, misprinted",
    source: "arkansas-fsa6097",
    mark: "READ",
    leftOut:
      "a unit error that no function of ours could repeat: the row of peat has the journal's density",
  },
  {
    what: "bark, peat and chips oven dry, with water at container capacity",
    source: "ija-2012-978528",
    mark: "READ",
    leftOut: "the table's own rows in data/materials.csv; the weights drained are our arithmetic",
  },
  {
    what: "a lab sheet's compost, 1,018 lb moist and 808 dry at 35 % water",
    source: "a compost trader's laboratory sheet",
    mark: "READ",
    leftOut: "the printed dry weight does not fit its own moisture: 662 lb would",
  },
  {
    what: "compost of half water and half organic matter, 250 lb organic a cubic yard",
    source: "origin not identified",
    mark: "READ-2nd",
    leftOut: "a product of three given figures",
  },
  {
    what: "other densities of wastes and trimmings",
    source: "oregon-deq-densities and others",
    mark: "READ-2nd",
    leftOut: "rows of data/densities.csv; nothing is computed from them",
  },
  {
    what: "compost to topsoil 1 to 2 or 1 to 1, 25 to 50 % by volume, 5 to 15 % by weight",
    source: "umd-raised-beds",
    mark: "READ",
    checked: {
      file: "lib/soil/mix-advice.test.ts",
      title: "one part compost to one or two of topsoil is within what Maryland advises",
    },
  },
  {
    what: "other advice on mixes",
    source: "soils-for-salmon-2005, washington-lid-2012, wsu-ophardt-2014, nc-robeson-2021",
    mark: "READ",
    leftOut: "rows of data/mix-advice.csv that mixAdvice judges by; they have no worked answers",
  },
  {
    what: "depth of compost for a wanted organic share, Washington BMP T5.13",
    source: "from memory",
    mark: "from memory",
    leftOut: "recalled only, and its inputs were not seen with an answer",
  },
  {
    what: "organic matter of the mean compost",
    source: "calrecycle-composts",
    mark: "READ",
    checked: {
      file: "published/calrecycle-composts.test.ts",
      title: "organic matter 42.32 per cent",
    },
  },
  {
    what: "20 beds of 4 ft by 8 ft, 11 in deep, take 533 bags",
    source: "common practice",
    mark: "common practice",
    checked: { file: "lib/soil/bed-volume.test.ts", title: "533 bags of 1 ft3" },
  },
  {
    what: "four to six bags dress a 4 ft by 8 ft bed",
    source: "common practice",
    mark: "common practice",
    checked: { file: "lib/soil/depth-covered.test.ts", title: "four to six bags of 1 ft3" },
  },
];
