/** The source ids a row names: one, or several with commas as in a blend. */
export function sourcesOf(source: unknown): readonly string[] {
  return typeof source === "string" ? source.split(",").map((id) => id.trim()) : [];
}

/** Several rows' sources as one text, each once. */
export function sourcesTogether(sources: readonly unknown[]): string {
  return [...new Set(sources.flatMap(sourcesOf))].join(", ");
}
