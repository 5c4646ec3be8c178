export { type Line, linesOf } from "./lines.ts";
export { documentsNeeded, documentsOf, loadDocuments } from "./load.ts";
export { titleFromName, wrongName } from "./names.ts";
export { readNotebook, writeNotebook } from "./read.ts";
