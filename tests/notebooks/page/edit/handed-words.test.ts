import { expect, it } from "vitest";
import { handedWords } from "../../../../notebooks/engine/page/edit/handed-words.ts";
import type { ReferenceName } from "../../../../notebooks/engine/types/index.ts";

const base = { sources: [], throws: [], examples: [], parameters: [] } as const;

const names: readonly ReferenceName[] = [
  {
    ...base,
    name: "fillVolume",
    what: "function",
    group: "soil",
    signature: "fillVolume(bed: Bed, options?: FillOptions): Volume",
    summary: "How much fill a bed takes. More than that\nwould run over.",
    parameters: [
      { name: "bed", type: "Bed" },
      {
        name: "options",
        type: "FillOptions",
        optional: true,
        fields: [{ name: "freeBoard", type: "Length", help: "What stays free, 1 in by default." }],
      },
    ],
    returns: { type: "Range<Volume>" },
  },
  { ...base, name: "FillOptions", what: "type", group: "soil", signature: "", summary: "Options." },
  {
    ...base,
    name: "foot",
    what: "constant",
    group: "measure",
    signature: "foot: Length",
    summary: "A foot.",
  },
  {
    ...base,
    name: "published.species",
    what: "table",
    group: "published",
    signature: "",
    summary: "Woods.",
  },
  {
    ...base,
    name: "published.screws",
    what: "table",
    group: "published",
    signature: "",
    summary: "Screws.",
  },
];

it("words of a formula are made of the reference: options by argument, tables as fields, no types", () => {
  expect(handedWords(names)).toEqual([
    {
      name: "fillVolume",
      what: "range of volume",
      call: "fillVolume(bed, { freeBoard })",
      help: "How much fill a bed takes. Gives: range of volume.",
      options: [
        [],
        [{ name: "freeBoard", what: "length", help: "What stays free, 1 in by default." }],
      ],
      fields: [],
    },
    { name: "foot", what: "measure", help: "A foot.", options: [], fields: [] },
    {
      name: "published",
      what: "published",
      options: [],
      fields: [
        { name: "species", help: "Woods." },
        { name: "screws", help: "Screws." },
      ],
    },
  ]);
});
