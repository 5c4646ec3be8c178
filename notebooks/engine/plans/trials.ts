import type { CellId, ShownEntry } from "../types/index.ts";
import { type Variation, variationOf } from "./variation.ts";

/** One text to be tried in an entry; the first of the candidates that is not refused counts. */
export interface Trial {
  readonly id: CellId;
  readonly end: "low" | "high" | "option";
  /** What a person reads in place of the text: an option's label. */
  readonly label?: string;
  readonly candidates: readonly string[];
  /** The reader wrote this bound. */
  readonly own?: boolean;
}

/** How an entry is varied, with the reader's own bounds in place of the usual ones. */
export interface Varied {
  readonly id: CellId;
  readonly entry: ShownEntry;
  readonly variation: Variation;
  readonly trials: readonly Trial[];
}

export interface OwnRange {
  readonly low?: string;
  readonly high?: string;
}

export function variedEntry(
  id: CellId,
  entry: ShownEntry,
  { share, own = {} }: { readonly share: number; readonly own?: OwnRange | undefined },
): Varied {
  const usual = variationOf(entry, share);
  const variation = withOwn(usual, entry, own);
  return { id, entry, variation, trials: trialsOf(id, variation, own) };
}

/** Where the usual range can't be told, the reader's own bounds are one. */
function withOwn(usual: Variation, entry: ShownEntry, { low, high }: OwnRange): Variation {
  const isFigure = usual.by === "range" || canHaveRange(usual, entry);
  if (!isFigure || (low === undefined && high === undefined)) return usual;
  const known = usual.by === "range" ? usual : { low: [], high: [] };
  return {
    by: "range",
    low: low === undefined ? known.low : [low],
    high: high === undefined ? known.high : [high],
  };
}

const words: ReadonlySet<ShownEntry["entry"]> = new Set(["choice", "yes-no"]);

/** Whether a low and a high may be written for an entry that has no usual range. */
export function canHaveRange(variation: Variation, entry: ShownEntry): boolean {
  return variation.by === "none" && !words.has(entry.entry) && entry.problem === undefined;
}

function trialsOf(id: CellId, variation: Variation, own: OwnRange): readonly Trial[] {
  if (variation.by === "options")
    return variation.options.map(({ text, label }) => ({
      id,
      end: "option" as const,
      label,
      candidates: [text],
    }));
  if (variation.by === "none") return [];
  return (["low", "high"] as const).flatMap((end): Trial[] => {
    const candidates = variation[end];
    if (candidates.length === 0) return [];
    return [{ id, end, candidates, ...(own[end] === undefined ? {} : { own: true }) }];
  });
}
