import type { Answer } from "./answers.ts";

/** Whether a row of answers says anything else in one column than in another. */
export function differs(answers: readonly (Answer | undefined)[]): boolean {
  const words = answers.flatMap((answer) =>
    answer === undefined ? [] : [answer.is === "figure" ? answer.figure.text : "error"],
  );
  return new Set(words).size > 1;
}

/**
 * The columns with the lowest of a row, where less of it is better for whoever pays: of money, and
 * only once there are two that differ. Which way is better is nobody's to say for anything else.
 */
export function lowest(answers: readonly (Answer | undefined)[]): ReadonlySet<number> {
  const sums = answers.flatMap((answer, column) =>
    answer?.is === "figure" && answer.measure !== undefined && isMoney(answer.measure.of)
      ? [{ column, text: answer.figure.text, size: answer.measure.likely, of: answer.measure.of }]
      : [],
  );
  const [first] = sums;
  if (first === undefined || sums.some(({ of }) => of !== first.of)) return new Set();
  const least = sums.reduce((low, sum) => (sum.size < low.size ? sum : low));
  if (sums.every(({ text }) => text === least.text)) return new Set();
  // What is printed alike is alike to the reader.
  return new Set(sums.filter(({ text }) => text === least.text).map(({ column }) => column));
}

function isMoney(of: string): boolean {
  return of === "money" || of.startsWith("money in ");
}
