/** One change of a text: what stands between `from` and `to` becomes `insert`. */
export interface TextChange {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/**
 * The smallest single change that makes one text of another; undefined where they are the same. What
 * is blank at the end counts for nothing: the document does not hold it, and somebody may be about to
 * write there.
 */
export function changeTo(now: string, wanted: string): TextChange | undefined {
  if (now.trimEnd() === wanted.trimEnd()) return undefined;
  const most = Math.min(now.length, wanted.length);
  let from = 0;
  while (from < most && now[from] === wanted[from]) from += 1;
  let tail = 0;
  while (tail < most - from && now.at(-1 - tail) === wanted.at(-1 - tail)) tail += 1;
  return { from, to: now.length - tail, insert: wanted.slice(from, wanted.length - tail) };
}
