import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { needChromium } from "./chromium.ts";
import { out, root } from "./root.ts";

// Everything a change must pass: the build, the types and cells and lint, every test. The last
// line is the count, so that whoever runs it need not read the rest.
interface VitestReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly numFailedTestSuites: number;
}

function step(script: string): boolean {
  const args = [join(root, "build/run.mjs"), join(root, script)];
  return spawnSync(process.execPath, args, { cwd: root, stdio: "inherit" }).status === 0;
}

const chromium = needChromium();
mkdirSync(out, { recursive: true });
const built = step("build/build.ts");
const checked = step("build/check.ts");
const report = join(out, "tests.json");
const tests = spawnSync(
  process.execPath,
  [
    join(root, "node_modules/vitest/vitest.mjs"),
    "run",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${report}`,
    ...process.argv.slice(2),
  ],
  { cwd: root, stdio: "inherit", env: { ...process.env, CHROMIUM: chromium } },
);
const { numPassedTests: passed, numFailedTests: failed } = JSON.parse(
  readFileSync(report, "utf8"),
) as VitestReport;
// The build and the checks count as a test each: a failed one must show in the line.
const steps = [built, checked];
const stepsPassed = steps.filter(Boolean).length;
console.log(`${passed + stepsPassed} passed, ${failed + steps.length - stepsPassed} failed`);
process.exit(built && checked && tests.status === 0 ? 0 : 1);
