/** Enough of a board or piece to know what it is bought as. */
export interface BoughtAs {
  readonly section: { readonly name: string };
  readonly timber?: string | undefined;
}

/** What is told apart when boards are bought: section and timber. */
export function groupOf({ section, timber }: BoughtAs): string {
  return `${section.name} ${timber ?? ""}`;
}

/** The same with the length, to a hundredth of a millimetre. */
export function kindOf(board: BoughtAs & { readonly length: { readonly si: number } }): string {
  return `${groupOf(board)} ${board.length.si.toFixed(5)}`;
}
