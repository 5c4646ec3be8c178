import type { Caution } from "../check/index.ts";

/** What every caution takes: what called for it. */
export interface CautionOptions {
  /** What called for the caution, in words: "row 4 of the boards kept". Default: left out. */
  readonly because?: string;
}

/** The caution with what called for it, left out where nothing is said. */
export function calledFor(caution: Caution, options: CautionOptions): Caution {
  const { because } = options;
  return because === undefined || because === "" ? caution : { ...caution, because };
}
