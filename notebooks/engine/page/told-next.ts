const key = "bedwright:told-next";

/** Leaves words for the page this one is about to go to. */
export function tellNext(words: readonly string[]): void {
  try {
    sessionStorage.setItem(key, JSON.stringify(words));
  } catch {
    // Without a session there is nobody to tell; the notebook itself keeps what was left in it.
  }
}

/** What the page before has left to be told; told once. */
export function toldBefore(): readonly string[] {
  try {
    const words: unknown = JSON.parse(sessionStorage.getItem(key) ?? "[]");
    sessionStorage.removeItem(key);
    return Array.isArray(words) ? words.filter((one) => typeof one === "string") : [];
  } catch {
    return [];
  }
}
