/** The words of a name in camel case or with underlines: `soilDepth` is "Soil depth". */
export function titleOf(name: string): string {
  const words = wordsOf(name);
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

/** The same without a capital: `onHand` is "on hand". */
export function wordsOf(name: string): string {
  return name
    .replace(
      /([a-z\d])([A-Z])/g,
      (_, before: string, after: string) => `${before} ${after.toLowerCase()}`,
    )
    .replace(/[_-]+/g, " ")
    .trim();
}
