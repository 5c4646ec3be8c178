import { tellPaper } from "./on-paper.ts";

/** Makes the page ready for paper whenever it is printed, and for the screen again after. */
export function readyForPaper(title: string): void {
  const foot = new CSSStyleSheet();
  // The foot of a sheet can only be set by a style sheet; the title goes in as a CSS string.
  foot.replaceSync(`@page { @bottom-left { content: ${cssString(title)}; } }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, foot];
  addEventListener("beforeprint", () => tellPaper(true));
  addEventListener("afterprint", () => tellPaper(false));
}

/** A text as a string of CSS: quotes, backslashes and line ends by their code. */
function cssString(text: string): string {
  const safe = text.replace(
    /[^\p{L}\p{N} .,:;()–-]/gu,
    (one) => `\\${one.codePointAt(0)?.toString(16)} `,
  );
  return `"${safe}"`;
}
