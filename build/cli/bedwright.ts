#!/usr/bin/env node
import data from "made:data";
import rules from "made:rules";
import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Solve } from "../../lib/index.ts";
import { commandLine } from "../../notebooks/engine/headless/index.ts";
import { aq } from "../arquero.ts";
import { highsSolver } from "../highs-solver.ts";
import { makeHost } from "../host.ts";
import { longWorkHere } from "../long-work.ts";
import { Plot } from "../plot.ts";

const file = fileURLToPath(import.meta.url);

/** The solver's bytes lie beside the bundle; before a build they are in the package. */
function solverFile(): string {
  const beside = join(dirname(file), "highs.wasm");
  return existsSync(beside) ? beside : createRequire(file).resolve("highs/runtime");
}

let ready: Promise<Solve> | undefined;
const solve: Solve = async (...asked) => {
  ready ??= readFile(solverFile()).then((wasm) => highsSolver({ wasm }));
  return (await ready)(...asked);
};

/** The clock's day, where the person is. */
function localDay(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

// Whoever reads the output may stop before its end, as `head` does: that is no failure.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit(process.exitCode ?? 0);
});

process.exitCode = await commandLine({
  argv: process.argv.slice(2),
  makeHost: () => {
    const work = longWorkHere(solve);
    return makeHost({
      longWork: (name) => (given, control) => {
        const known = work[name];
        if (known === undefined) throw new TypeError(`${name} is not on the list of long work`);
        return known(given, control);
      },
      data,
      rules,
      extras: { Plot, aq },
    });
  },
  shipped: join(dirname(file), "../../../notebooks"),
  script: { file, reads: [solverFile()] },
  cwd: process.cwd(),
  today: localDay(),
  input: process.stdin,
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  idle: new Promise((resolve) => {
    process.once("beforeExit", resolve);
  }),
});
