import { tellPaper } from "./on-paper.ts";

/** Tells what is drawn otherwise on paper whenever the page is printed, and again after. */
export function readyForPaper(): void {
  addEventListener("beforeprint", () => tellPaper(true));
  addEventListener("afterprint", () => tellPaper(false));
}

let foot: CSSStyleSheet | undefined;

/** Puts the notebook's title at the foot of every sheet. */
export function nameSheets(title: string): void {
  if (!foot) {
    foot = new CSSStyleSheet();
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, foot];
  }
  // The foot of a sheet can only be set by a style sheet; the title goes in as a CSS string.
  foot.replaceSync(`@page { @bottom-left { content: ${cssString(title)}; } }`);
}

/** A text as a string of CSS: quotes, backslashes and line ends by their code. */
function cssString(text: string): string {
  const safe = text.replace(
    /[^\p{L}\p{N} .,:;()–-]/gu,
    (one) => `\\${one.codePointAt(0)?.toString(16)} `,
  );
  return `"${safe}"`;
}
