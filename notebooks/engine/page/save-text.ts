import { el } from "./dom.ts";

/** Lets the browser save a text under a name. Only ever called because the reader asked for it. */
export function saveText(text: string, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  el("a", { href: address, download: name }).click();
  // Some browsers still read it after the click.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
