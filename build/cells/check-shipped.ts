import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { readNotebook } from "../../notebooks/engine/document/index.ts";
import type { Notebook } from "../../notebooks/engine/types/index.ts";
import { loadPublished } from "../published.ts";
import { out, root } from "../root.ts";
import { dataFiles } from "../steps/made.ts";
import { checkCells } from "./check-cells.ts";
import { handedNames } from "./handed-names.ts";

/** Checks the cells of every shipped notebook: `notebooks/FILE.md:line:column message` for each problem. */
export async function checkShippedCells(): Promise<readonly string[]> {
  const documents = new Map<string, Notebook>();
  const folder = join(root, "notebooks");
  for (const file of readdirSync(folder)
    .filter((name) => name.endsWith(".md"))
    .sort()) {
    documents.set(file, readNotebook(readFileSync(join(folder, file), "utf8"), file));
  }
  const problems = checkCells(documents, {
    folder: join(out, "cells"),
    names: await handedNames(),
    types: join(root, "build/cells/cell-names.d.ts"),
    library: join(root, "lib/index.ts"),
    published: loadPublished(dataFiles()),
  });
  return problems.map((problem) => `notebooks/${problem}`);
}
