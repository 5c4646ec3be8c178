/** What came of something that may be refused: its value, or why not, in words for the reader. */
export type Outcome<T> =
  | { readonly good: true; readonly value: T }
  | { readonly good: false; readonly words: string };

export function good<T>(value: T): Outcome<T> {
  return { good: true, value };
}

export function refused<T>(words: string): Outcome<T> {
  return { good: false, words };
}
