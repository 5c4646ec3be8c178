import type { Context } from "../context.ts";
import { BlockTools } from "./block-tools.ts";

/** Sets up the writing view: what stands after each block. The page is to be laid out anew after it. */
export function startWriting(context: Context): void {
  const tools = new BlockTools(context);
  context.editing.blockTools = (index, block) => tools.at(index, block);
}
