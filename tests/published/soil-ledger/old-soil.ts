import type { LedgerRow } from "./row.ts";

/** Soil that is dug, its swell, roots and lead. */
export const rows: readonly LedgerRow[] = [
  {
    what: "sand in place, loose and compacted",
    source: "fm-5-434",
    mark: "READ-2nd",
    checked: {
      file: "published/fm-5-434.test.ts",
      title: "100 yd3 of sand in place make 111 loose and 95 compacted",
    },
  },
  {
    what: "loose to compacted of four soils",
    source: "fm-5-434",
    mark: "READ-2nd",
    checked: { file: "published/fm-5-434.test.ts", title: "%s, loose to compacted, %s" },
  },
  {
    what: "machine hours of a compactor, 487 cu yd an hour",
    source: "fm-5-434",
    mark: "READ-2nd",
    leftOut: "machines: no function of ours",
  },
  {
    what: "10 cu yd become 13 when dug",
    source: "earthwork-swell-page",
    mark: "READ",
    checked: {
      file: "published/earthwork-swell-page.test.ts",
      title: "10 yd3 in the ground that become 13 yd3 dug have swelled by 30 %",
    },
  },
  {
    what: "swell of 26 %, a ton in the ground and in the truck",
    source: "earthwork-worked-answer",
    mark: "READ",
    checked: {
      file: "published/earthwork-worked-answer.test.ts",
      title: "a ton takes up 0.59 yd3 in the ground",
    },
  },
  {
    what: "clay by its weights: swell, load factor, shrinkage",
    source: "a tutoring page",
    mark: "READ",
    leftOut: "its inputs were read, its answers are our arithmetic",
  },
  {
    what: "10 to 15 % settling of planting mixes",
    source: "ontario-soil-details",
    mark: "READ",
    leftOut: "a figure that data/materials.csv takes; the page works nothing out",
  },
  {
    what: "no settling of bark in pots and of green-roof media",
    source: "ncstate-wood-substrates and others",
    mark: "READ",
    leftOut: "trials whose finding the range of bark rests on, without figures",
  },
  {
    what: "consumer claims of 6 to 12 in in a season",
    source: "a lay page",
    mark: "READ",
    leftOut: "unsupported, and far from every other figure",
  },
  {
    what: "hours of digging for each m3",
    source: "menlo-labour-sheet",
    mark: "READ",
    checked: { file: "published/labour-sheets.test.ts", title: "%s: %s to %s (READ)" },
  },
  {
    what: "hours of loading, grading and laying sheet by hand",
    source: "menlo-labour-sheet, contractor-labour-sheet",
    mark: "READ",
    leftOut: "work that diggingHours does not reckon",
  },
  {
    what: "widths, heights and paths",
    source: "several",
    mark: "READ",
    leftOut: "layout of beds, not of soil",
  },
  {
    what: "rooting depths of 24 crops",
    source: "fao-56",
    mark: "READ-2nd",
    checked: { file: "published/fao-56-roots.test.ts", title: "%s to %s m (READ-2nd)" },
  },
  {
    what: "rooting classes of a garden author",
    source: "a garden author's table of 2020",
    mark: "READ",
    leftOut: "not primary, and the rows above say the same in figures",
  },
  {
    what: "levels of lead of 1994, 2024 and 2025 with their dates",
    source: "epa-lead-2024, epa-lead-2025",
    mark: "READ",
    checked: { file: "published/soil-lead-levels.test.ts", title: "200 for screening, 600" },
  },
  {
    what: "lead above which no vegetables are grown, and what is natural",
    source: "umd-lead",
    mark: "READ",
    checked: {
      file: "published/soil-lead-levels.test.ts",
      title: "no vegetables above 400, natural below 50",
    },
  },
  {
    what: "four tiers of lead",
    source: "garden-lead-leaflet",
    mark: "READ",
    checked: { file: "published/soil-lead-levels.test.ts", title: "14 low, 31 moderate" },
  },
  {
    what: "natural lead of 15 to 40, 2 to 60 and below 50 ppm",
    source: "leaflets of the universities of Massachusetts, Connecticut and New Hampshire",
    mark: "READ",
    leftOut: "three more ranges of what is natural; the one of Maryland stands for them",
  },
  {
    what: "depth of beds: 6 in at least, 8 to 10, 8 to 12, 18 to 24 in",
    source: "nc-robeson-2021, restreets-05i",
    mark: "READ",
    leftOut: "rows of data/bed-depths.csv for the reference; advice without an answer",
  },
  {
    what: "rolled soil is its volume over 1.2; compacted earth weighs 30 % more",
    source: "compaction pages; calrecycle-calculations",
    mark: "READ",
    leftOut: "soil that is rolled or trodden; a bed's is neither",
  },
  {
    what: "soil dug in a bed stands above the paths",
    source: "University of Missouri G6985",
    mark: "READ",
    leftOut: "a finding without a figure",
  },
  {
    what: "shares of children above a blood level at 100 and 200 ppm",
    source: "a newsletter of 2024",
    mark: "READ-2nd",
    leftOut: "a health model that we do not run",
  },
];
