/** The groups of the reference in the order of the job, by the folder of the library they stand for. */
export const groups = [
  { name: "safety", title: "Working safely" },
  { name: "lumber", title: "Boards and how to cut them" },
  { name: "buying", title: "Where to buy, in how many trips" },
  { name: "cost", title: "Prices and what goods cost" },
  { name: "liner", title: "Liner" },
  { name: "fasteners", title: "Screws, plates and sawn ends" },
  { name: "soil", title: "Soil and filling" },
  { name: "decay", title: "How organic matter rots" },
  { name: "compost", title: "Compost" },
  { name: "mulch", title: "Mulch" },
  { name: "garden", title: "A whole garden" },
  { name: "drawing", title: "Drawings" },
  { name: "entries", title: "Entries for the reader" },
  { name: "chance", title: "Drawing uncertain figures" },
  { name: "table", title: "Tables" },
  { name: "measure", title: "Quantities, units and dates" },
  { name: "check", title: "Problems and cautions" },
  { name: "published", title: "Published tables" },
  { name: "packages", title: "Packages that cells may use" },
] as const;

/** The group of a file of the project: `lib/soil/swell.ts` is of `soil`. */
export function groupOf(file: string): string {
  if (file.startsWith("notebooks/fields/")) return "entries";
  const [, folder = ""] = file.split("/");
  // The solver is the session's business: cells never hand one in.
  return folder === "cutting" ? "session" : folder;
}
