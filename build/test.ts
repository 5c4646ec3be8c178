import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { needChromium, needPdfReader } from "./chromium.ts";
import { countPublished, type TestFile } from "./published-count.ts";
import { retriedFile } from "./retried.ts";
import { out, root } from "./root.ts";

// Everything a change must pass: the build, the types and cells and lint, every test. The last
// line is the count, so that whoever runs it need not read the rest.
interface VitestReport {
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly TestFile[];
}

function step(script: string): boolean {
  const args = [join(root, "build/run.mjs"), join(root, script)];
  return spawnSync(process.execPath, args, { cwd: root, stdio: "inherit" }).status === 0;
}

const chromium = needChromium();
needPdfReader();
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
    `--reporter=${join(root, "build/retried.ts")}`,
    `--outputFile.json=${report}`,
    ...process.argv.slice(2),
  ],
  { cwd: root, stdio: "inherit", env: { ...process.env, CHROMIUM: chromium } },
);
const {
  numPassedTests: passed,
  numFailedTests: failed,
  testResults,
} = JSON.parse(readFileSync(report, "utf8")) as VitestReport;
const published = countPublished(testResults);
const retried = JSON.parse(readFileSync(retriedFile, "utf8")) as readonly string[];
for (const name of retried) console.log(`passed only when made again: ${name}`);
console.log([published.line, ...published.missing].join("\n"));
// Only a whole run says something of how many there are.
const enough = process.argv.length > 2 || published.missing.length === 0;
// The build, the checks and a test file that could not be read count too: they must show in the line.
const unread = testResults.filter(
  (file) =>
    file.status === "failed" && file.assertionResults.every(({ status }) => status !== "failed"),
).length;
const steps = [built, checked, enough];
const stepsPassed = steps.filter(Boolean).length;
console.log(
  `${passed + stepsPassed} passed, ${failed + unread + steps.length - stepsPassed} failed`,
);
process.exit(built && checked && enough && tests.status === 0 ? 0 : 1);
