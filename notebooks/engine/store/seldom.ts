// What is seldom needed, apart from the index: a page that only reads a notebook does not fetch it.
export { importAll } from "./bring-in.ts";
export { exportAll } from "./everything.ts";
export { renameDocument } from "./rename.ts";
