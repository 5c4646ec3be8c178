import { expect, test } from "vitest";
import {
  documentsNeeded,
  loadDocuments,
  readNotebook,
  titleFromName,
} from "../../../notebooks/engine/document/index.ts";

const uses = (...files: string[]): string =>
  files.map((file) => `\`\`\`uses ${file}\nbeds\n\`\`\`\n`).join("\n");

test("the files a notebook needs: each once, none that may not be named", () => {
  const text = uses("b.md", "a.md", "b.md", "../x.md", "http://x/y.md", "a.txt", "");
  expect(documentsNeeded(readNotebook(text, "n.md"))).toEqual(["b.md", "a.md"]);
});

test("all that is used is read once, by way of others too; circles and missing files end", async () => {
  const files: Record<string, string> = {
    "n.md": uses("a.md", "b.md"),
    "a.md": uses("gone.md", "b.md"),
    "b.md": uses("n.md", "gone.md"),
  };
  const asked: string[] = [];
  const documents = await loadDocuments("n.md", async (file) => {
    asked.push(file);
    return files[file];
  });
  expect([...documents.keys()]).toEqual(["n.md", "a.md", "b.md"]);
  expect(asked).toEqual(["n.md", "a.md", "b.md", "gone.md"]);
});

test.each([
  ["topDressing", "Top dressing"],
  ["beds", "Beds"],
  ["boardsPerBed2", "Boards per bed2"],
  ["cost_per_bed", "Cost per bed"],
  ["myPDFPlan", "My PDF plan"],
])("%s reads as %s", (name, title) => {
  expect(titleFromName(name)).toBe(title);
});
