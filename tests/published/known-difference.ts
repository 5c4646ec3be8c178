import { expect } from "vitest";
import { published } from "./compare.ts";

/**
 * A printed figure that is known not to agree, with the reason. It fails when the two agree: then
 * the entry is to be made an ordinary check.
 */
export function knownDifference(value: number, printed: string, reason: string): void {
  expect(reason.length).toBeGreaterThan(10);
  expect(() => published(value, printed), `now agrees: ${reason}`).toThrow();
}
