import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { checkShippedCells } from "./cells/check-shipped.ts";
import { root } from "./root.ts";

// Types of every part, each with the surroundings it may know; then the cells; then lint and format.
const parts = [
  "lib",
  "notebooks",
  "notebooks/engine/headless",
  "notebooks/engine/worker",
  "notebooks/engine/store",
  "notebooks/engine/page",
  "build",
  "tests",
];

function run(words: string, command: string, args: readonly string[]): boolean {
  const started = performance.now();
  const done = spawnSync(command, args, { cwd: root, stdio: "inherit" });
  const seconds = ((performance.now() - started) / 1000).toFixed(1);
  console.log(`${done.status === 0 ? "fine" : "FAULTY"}  ${words} (${seconds} s)`);
  return done.status === 0;
}

const tsc = join(root, "node_modules/typescript/bin/tsc");
let fine = true;
for (const part of parts) {
  if (!existsSync(join(root, part, "tsconfig.json")))
    throw new Error(`${part} has no tsconfig.json`);
  fine = run(`types of ${part}`, process.execPath, [tsc, "-p", part]) && fine;
}
const problems = await checkShippedCells();
for (const problem of problems) console.log(problem);
console.log(`${problems.length === 0 ? "fine" : "FAULTY"}  cells of the shipped notebooks`);
fine = problems.length === 0 && fine;
fine =
  run("lint and format", join(root, "node_modules/.bin/biome"), ["check", "--error-on-warnings"]) &&
  fine;
process.exit(fine ? 0 : 1);
