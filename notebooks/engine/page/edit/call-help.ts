import type { HandedWord } from "./suggestions.ts";
import { writingPlace } from "./writing-place.ts";

/** A line about the function whose call the caret stands in; undefined outside of a known one. */
export function callHelp(
  text: string,
  caret: number,
  handed: readonly HandedWord[],
): { readonly call: string; readonly help: string } | undefined {
  const place = writingPlace(text, caret);
  const known = place.call && handed.find(({ name }) => name === place.call?.name);
  if (!known?.call) return undefined;
  return { call: known.call, help: known.help ?? "" };
}
