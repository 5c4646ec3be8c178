import type { Context } from "../context.ts";
import { dayInWords } from "../days.ts";
import { el } from "../dom.ts";
import { saveText } from "../save-text.ts";
import { frozenPage } from "./frozen-page.ts";
import { styleText } from "./one-page-style.ts";

/** Nothing may be loaded, nothing may run: styles and fonts are in the file itself. */
const policy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:";

/** Saves the notebook as it stands as one page, to read and to print. */
export async function saveOnePage(context: Context): Promise<void> {
  const text = await onePage(context);
  const name = `${context.book.main.file.replace(/\.md$/, "")}-${context.today}.html`;
  saveText(text, name, "text/html");
}

/** The text of that page. */
export async function onePage(context: Context): Promise<string> {
  const { title } = context.book.main;
  const frame = frozenPage(context);
  const page = frame.querySelector(".page") ?? frame;
  page.prepend(asOf(context));
  const body = frame.outerHTML;
  const style = await styleText(frame);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${escaped(title)}</title>
<style>
${style}
</style>
</head>
<body data-view="read">
${body}
</body>
</html>
`;
}

function asOf({ book, today }: Context): HTMLElement {
  return el(
    "p",
    { class: "asof" },
    `As of ${dayInWords(today)}: a copy of “${book.main.title}” to read and print, with the entries ` +
      "and answers of that day. Nothing in it is worked out again.",
  );
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (one) => `&#${one.charCodeAt(0)};`);
}
