import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { out } from "../../../build/root.ts";
import type { Heard } from "./listeners.ts";
import type { Probe } from "./read-probes.ts";

/** What a browser's two runs heard of each probe. */
export type Runs = Readonly<
  Record<string, { readonly control: readonly Heard[]; readonly walled: readonly Heard[] }>
>;

const folder = join(out, "ways-out");
const browsers = ["Chromium", "Firefox"];

/** Keeps what one browser heard, and writes the table of all into `ways-out.md`. Gives its last lines. */
export function keepRuns(browser: string, runs: Runs, probes: readonly Probe[]): string {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${browser}.json`), JSON.stringify(runs));
  const known = browsers.flatMap((name) => {
    const file = join(folder, `${name}.json`);
    return existsSync(file) ? [{ name, runs: JSON.parse(readFileSync(file, "utf8")) as Runs }] : [];
  });
  const heads = known.flatMap(({ name }) => [`${name}, walls down`, `${name}`]);
  const lines = probes.map(({ name, kind, tries }) => {
    const cells = known.flatMap(({ runs: one }) => [
      words(one[name]?.control, "not shown"),
      words(one[name]?.walled, "nothing"),
    ]);
    return row([name, kind, tries, ...cells]);
  });
  const sums = known.map(({ name, runs: one }) => sum(name, one)).join("\n\n");
  const text = [
    "# Ways out, and what was heard",
    "“Walls down” is the control run: what the listeners hear of the same probe without our policy and without what the room takes away. “Not shown” means that this browser let nothing out even then, so nothing is proven by its silence.",
    [
      row(["way out", "kind", "it", ...heads]),
      row(Array(3 + heads.length).fill("---")),
      ...lines,
    ].join("\n"),
    sums,
  ].join("\n\n");
  writeFileSync(join(out, "ways-out.md"), `${text}\n`);
  return sums;
}

const row = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;

function words(heard: readonly Heard[] | undefined, none: string): string {
  if (heard === undefined) return "not run";
  return heard.length === 0 ? none : heard.join(", ");
}

function sum(browser: string, runs: Runs): string {
  const all = Object.entries(runs);
  const shown = all.filter(([, { control }]) => control.length > 0);
  const out = all.filter(([, { walled }]) => walled.length > 0).map(([name]) => name);
  const silent = all.filter(([, { control }]) => control.length === 0).map(([name]) => name);
  return `${browser}: ${all.length} ways out were tried. With the walls down ${shown.length} of them were heard; with the walls up ${out.length === 0 ? "none" : `${out.length} (${out.join(", ")})`}. Not shown with the walls down: ${silent.join(", ") || "none"}.`;
}
