// What changes documents or packs them, apart from the index: a page that only reads a notebook does
// not fetch it.
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
export { wordsFor } from "./open-fence.ts";
export { pack, type ToPack } from "./pack.ts";
export { type Unpacked, unpack } from "./unpack.ts";
