/** What every link begins with after the `#`. */
export const opening = "open=";

/** Whether what stands after an address's `#` means to be a link of ours, good or bad. */
export function isLink(hash: string): boolean {
  return hash.replace(/^#/, "").startsWith(opening);
}
