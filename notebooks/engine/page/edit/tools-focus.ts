/** Gives focus to what stands after a block in the writing view, as when the block after it has gone. */
export function focusTools(index: number): void {
  const tools = document.querySelectorAll<HTMLElement>(".blocktools");
  const found = [...tools].find((one) => one.dataset.index === String(index)) ?? tools[0];
  found?.querySelector("button")?.focus();
}
