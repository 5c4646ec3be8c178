import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect } from "vitest";
import type { Caution } from "../../../lib/index.ts";
import { refusals, wrong } from "../soil/at-hand.ts";

const file = join(import.meta.dirname, "../../../data/sources.json");
const sources = JSON.parse(readFileSync(file, "utf8")) as Record<string, unknown>;

/** What every caution must have: a fact, advice, whose word goes above, and known sources. */
export function expectWhole(caution: Caution, id: string): void {
  expect(caution.id).toBe(id);
  for (const words of [caution.fact, caution.advice, caution.defersTo]) {
    expect(words).toMatch(/^[A-Z].{20,}\.$/);
    expect(words).not.toMatch(/undefined|NaN/);
  }
  expect(caution.sources.length).toBeGreaterThan(0);
  for (const source of caution.sources) {
    if (source !== "common practice") expect(sources).toHaveProperty(source);
  }
}

/** What every maker of cautions does with what called for it, and with what is none. */
export function expectBecause(make: (options: { readonly because?: string }) => Caution): void {
  expect(make({ because: "bed 3" }).because).toBe("bed 3");
  expect(make({})).not.toHaveProperty("because");
  expect(make({ because: "" })).not.toHaveProperty("because");
  expect(refusals(() => make({ because: wrong(4) }))).toEqual(["unreadable because"]);
  expect(refusals(() => make(wrong(null)))).toEqual(["missing options"]);
  expect(refusals(() => make(wrong("bed 3")))).toEqual(["unreadable options"]);
}
