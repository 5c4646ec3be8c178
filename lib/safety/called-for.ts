import { type Caution, ProblemError, requireRecord } from "../check/index.ts";
import { receivedText } from "../measure/received.ts";

/** What every caution takes: what called for it. */
export interface CautionOptions {
  /** What called for the caution, in words: "row 4 of the boards kept". Default: left out. */
  readonly because?: string;
}

/** The caution with what called for it, left out where nothing is said. */
export function calledFor(caution: Caution, options: CautionOptions): Caution {
  requireRecord(options, ["options"]);
  const { because } = options;
  if (because !== undefined && typeof because !== "string") {
    throw new ProblemError([
      {
        code: "unreadable",
        path: ["because"],
        allowed: "a text that says what called for the caution",
        received: receivedText(because),
        remedy: "Write what it is: “boards kept, row 4”.",
      },
    ]);
  }
  return because === undefined || because === "" ? caution : { ...caution, because };
}
