import { describe, expect, it } from "vitest";
import { readCsv } from "../../../lib/table/index.ts";
import { documentsOf } from "../../../notebooks/engine/document/index.ts";
import { openLink } from "../../../notebooks/engine/page/share/open-link.ts";
import { type LinkParts, versionOf, writeLink } from "../../../notebooks/engine/share/index.ts";
import type { CellId, TableText } from "../../../notebooks/engine/types/index.ts";

const plot = `# My plot

\`\`\`uses garden.md
beds
\`\`\`

\`\`\`js cell width
lengthEntry("4 ft")
\`\`\`
`;
const garden = `# Garden

\`\`\`csv table beds
bed,length
A,8 ft
B,6 ft
\`\`\`
`;

function shelf(texts: Readonly<Record<string, string>>) {
  return {
    loadNotebook: async (file: string) => texts[file],
    csv: { readCsv, writeCsv: () => "" },
  };
}

const beds: CellId = "garden.md#beds";
const given: TableText = readCsv("bed,length\nA,8 ft\nB,6 ft\n", "beds");

function hashOf(parts: Partial<LinkParts>): string {
  const link = writeLink({
    file: "plot.md",
    version: versionOf(plot),
    entered: {},
    defaults: new Map([[beds, given]]),
    ...parts,
  });
  if (!link.ok) throw new Error(link.words);
  return `#${link.text}`;
}

describe("opening a link", () => {
  const changed = {
    ...given,
    rows: [
      ["A", "8 ft"],
      ["B", "7 ft"],
      ["C", "5 ft"],
    ],
  };
  const hash = hashOf({ entered: { "plot.md#width": "3 ft", [beds]: changed } });

  it("gives the shipped notebook, what it uses, and what was entered in both", async () => {
    const opened = await openLink(shelf({ "plot.md": plot, "garden.md": garden }), hash);
    expect(opened).toMatchObject({
      ok: true,
      title: "My plot",
      file: "plot.md",
      text: plot,
      carried: new Map([["garden.md", garden]]),
      entered: { "plot.md#width": "3 ft", [beds]: changed },
      left: [],
      otherVersion: false,
    });
  });

  it("gives the same key for the same link, another for another", async () => {
    const here = shelf({ "plot.md": plot, "garden.md": garden });
    const keys = await Promise.all(
      [hash, hash.slice(1), hashOf({})].map(async (one) => {
        const opened = await openLink(here, one);
        return opened.ok ? opened.key : "";
      }),
    );
    expect(keys[0]).toMatch(/^[0-9a-f]{24}$/);
    expect(keys[1]).toBe(keys[0]);
    expect(keys[2]).not.toBe(keys[0]);
  });

  it("keeps as text what does not fit another version", async () => {
    const later = garden.replace("B,6 ft", "B,6 ft 6 in");
    const opened = await openLink(
      shelf({ "plot.md": `${plot}\nMore.\n`, "garden.md": later }),
      hash,
    );
    if (!opened.ok) throw new Error(opened.words);
    expect(opened.entered).toEqual({ "plot.md#width": "3 ft" });
    expect(opened.otherVersion).toBe(true);
    expect(opened.left.map(({ id }) => id)).toEqual([beds]);
    expect(opened.text).toContain("7 ft");
    const [main] = documentsOf({ "plot.md": opened.text }).values();
    expect(main?.blocks.filter(({ kind }) => kind !== "prose")).toHaveLength(2);
  });

  it("takes the sender's own texts before the shipped ones", async () => {
    const mine = plot.replace("My plot", "The school's plot");
    const own = [{ file: "plot.md", text: mine }];
    const opened = await openLink(shelf({ "garden.md": garden }), hashOf({ own }));
    expect(opened).toMatchObject({ ok: true, title: "The school's plot", text: mine });
  });

  it("says what is wrong where there is no such notebook, or the link is broken", async () => {
    expect(await openLink(shelf({}), hash)).toEqual({
      ok: false,
      words: expect.stringContaining("plot.md"),
    });
    expect(await openLink(shelf({ "plot.md": plot }), hash.slice(0, -2))).toEqual({
      ok: false,
      words: expect.stringContaining("not whole"),
    });
  });
});
