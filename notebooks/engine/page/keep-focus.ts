/** Does something to the page and gives focus back to what had it, where moving it took it away. */
export function keepFocus(act: () => void): void {
  const before = deepest();
  const range = before instanceof HTMLInputElement ? selectionOf(before) : undefined;
  act();
  if (!(before instanceof HTMLElement) || before === document.body) return;
  if (!before.isConnected || deepest() === before) return;
  before.focus({ preventScroll: true });
  if (range && before instanceof HTMLInputElement) before.setSelectionRange(...range);
}

/** What has focus, within closed-off parts of the page too. */
function deepest(): Element | null {
  let at = document.activeElement;
  while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
  return at;
}

function selectionOf(input: HTMLInputElement): [number, number] | undefined {
  const { selectionStart, selectionEnd } = input;
  return selectionStart === null || selectionEnd === null
    ? undefined
    : [selectionStart, selectionEnd];
}
