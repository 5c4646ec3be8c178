/** "A-1, A-2 and 15 others". */
export function namesOf(names: readonly string[]): string {
  const shown = names.slice(0, 4).join(", ");
  const more = names.length - 4;
  return more > 0 ? `${shown} and ${more} more` : shown;
}
