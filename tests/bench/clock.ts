import { readFileSync } from "node:fs";

const place = "/proc/self/schedstat";

function onProcessor(): number | undefined {
  try {
    const nanoseconds = Number(readFileSync(place, "utf8").split(" ")[0]);
    return Number.isFinite(nanoseconds) ? nanoseconds / 1e6 : undefined;
  } catch {
    return undefined;
  }
}

/** Whether the system says how long the main thread had a processor to itself. */
export const isOnProcessor = onProcessor() !== undefined;

/**
 * Milliseconds that the main thread has run, so that others on the machine do not count; where the
 * system does not say, those gone by.
 */
export const workedMs = (): number => onProcessor() ?? performance.now();

/** What the milliseconds are, for the head of a table. */
export const clockWords = isOnProcessor ? "ms of the processor" : "ms gone by";
