import { harden } from "./harden.ts";

// Imported before everything else in a worker's script: what is taken away here is gone before any
// other module is evaluated, so that none of them can have kept hold of it.
harden(globalThis);
