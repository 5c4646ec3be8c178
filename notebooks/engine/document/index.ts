export {
  freeName,
  type NewBlock,
  withBlockAdded,
  withBlockDuplicated,
  withBlockMoved,
  withBlockRemoved,
  withHints,
} from "./blocks.ts";
export { withFormula, withTableText } from "./edit.ts";
export { withTitle } from "./heading.ts";
export { type Line, linesOf } from "./lines.ts";
export { documentsNeeded, documentsOf, loadDocuments } from "./load.ts";
export { titleFromName, wrongName } from "./names.ts";
export { wordsFor } from "./open-fence.ts";
export { pack, type ToPack } from "./pack.ts";
export { readNotebook, writeNotebook } from "./read.ts";
export { type Unpacked, unpack } from "./unpack.ts";
