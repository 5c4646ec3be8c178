/** All styles of the page as one text, with the fonts it uses inside. */
export async function styleText(frame: Element): Promise<string> {
  const rules: string[] = [];
  for (const sheet of [...document.styleSheets, ...document.adoptedStyleSheets])
    for (const rule of sheet.cssRules)
      rules.push(
        rule instanceof CSSFontFaceRule
          ? await fontRule(rule, { frame, base: sheet.href ?? location.href })
          : rule.cssText,
      );
  rules.push(onePageRules);
  // No text of ours ends the element it stands in.
  return rules.join("\n").replaceAll("</", "<\\/");
}

interface FontUse {
  readonly frame: Element;
  readonly base: string;
}

/** The face of formulas is large and seldom there. */
const withFormulas = /mono/i;

async function fontRule(rule: CSSFontFaceRule, { frame, base }: FontUse): Promise<string> {
  const family = rule.style.getPropertyValue("font-family");
  if (withFormulas.test(family) && !frame.querySelector("pre, .listing, .formula")) return "";
  const [, address] = /url\(["']?([^"')]+)["']?\)/.exec(rule.style.getPropertyValue("src")) ?? [];
  if (address === undefined) return "";
  const data = await dataAddress(new URL(address, base).href);
  // Without its font the page is read in a face the reader has.
  if (data === undefined) return "";
  const descriptors = ["font-weight", "font-stretch", "font-style"]
    .map((name) => [name, rule.style.getPropertyValue(name)] as const)
    .filter(([, value]) => value !== "")
    .map(([name, value]) => `${name}:${value};`);
  return `@font-face{font-family:${family};${descriptors.join("")}src:url("${data}") format("woff2")}`;
}

async function dataAddress(address: string): Promise<string | undefined> {
  try {
    const response = await fetch(address);
    if (!response.ok) return undefined;
    const bytes = new Uint8Array(await response.arrayBuffer());
    let text = "";
    for (let at = 0; at < bytes.length; at += 0x8000)
      text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
    return `data:font/woff2;base64,${btoa(text)}`;
  } catch {
    return undefined;
  }
}

/** Entries are texts in their trays, and the tally stands still. */
const onePageRules = `
.asof { padding-top: 1rem; font: 400 0.9375rem/1.4rem var(--figure); color: var(--ink2); }
.tray, .tray:hover { cursor: auto; }
.typed { padding: 0.35rem 0.5rem; min-width: 0; flex: 1; overflow-wrap: anywhere; }
.tray.in .typed { padding: 0.05rem 0.4rem; }
.val .tray .typed { text-align: right; padding-right: 0; font-size: 1.25rem; line-height: 1.5rem; margin-right: -2px; }
.val .tray:not(:has(.unit)) .typed { grid-column: 1 / -1; padding-right: 0.5rem; }
.edit .tray .typed { padding: 0.3rem 0.5rem; min-height: 2.25rem; overflow-wrap: normal; }
.fig { font-weight: 640; font-variant-numeric: lining-nums tabular-nums; white-space: nowrap; }
@media screen and (max-width: 959px) {
  body:has(.tally:not([hidden])) { padding-bottom: 0; }
  .tally { position: static; border: 0; background: none; }
  .tl { max-height: none; padding-inline: 0; }
  .tl h2 { display: block; }
}
@media print {
  .typed, .val .tray .typed { padding-block: 0.5mm; min-height: 0; }
  .val .tray .typed { font-size: 13pt; line-height: 16pt; }
  .edit .tray .typed { padding: 0.5mm 1mm; min-height: 0; }
}
`;
