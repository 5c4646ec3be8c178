import { harden } from "./harden.ts";

/**
 * What could not be taken away from this worker; nothing, or the worker must not start. Whoever
 * imports this imports it before everything else: what is taken away is gone before any other
 * module is evaluated, so that none of them can have kept hold of it. Outside a worker, as in
 * tests under Node, nothing is taken away.
 */
export const left: readonly string[] = "WorkerGlobalScope" in globalThis ? harden(globalThis) : [];
