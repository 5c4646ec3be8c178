import { harden } from "./harden.ts";

/**
 * What could not be taken away from this worker; nothing, or the worker must not start. Whoever
 * imports this imports it before everything else: what is taken away is gone before any other
 * module is evaluated, so that none of them can have kept hold of it.
 */
export const left: readonly string[] = harden(globalThis);
