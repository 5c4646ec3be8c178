import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Reporter, TestCase } from "vitest/node";
import { out } from "./root.ts";

export const retriedFile = join(out, "retried.json");

/** Notes the tests that passed only when they were made again, so that nobody overlooks them. */
export default class RetriedReporter implements Reporter {
  readonly #names: string[] = [];

  onTestCaseResult(test: TestCase): void {
    const count = test.diagnostic()?.retryCount ?? 0;
    if (count > 0 && test.result().state === "passed") this.#names.push(test.fullName);
  }

  onTestRunEnd(): void {
    mkdirSync(out, { recursive: true });
    writeFileSync(retriedFile, JSON.stringify(this.#names));
  }
}
