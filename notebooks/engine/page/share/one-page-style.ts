/**
 * All styles of the page as one text, with the fonts it uses inside. The sheet is fetched as it was
 * written: rules read back from the browser have lost shorthands in which variables stand.
 */
export async function styleText(frame: Element): Promise<string> {
  const texts: string[] = [];
  for (const { href } of document.styleSheets) {
    if (href === null) continue;
    const response = await fetch(href);
    if (!response.ok) throw new Error("its style could not be fetched");
    texts.push(await withFonts(await response.text(), { frame, base: href }));
  }
  for (const sheet of document.adoptedStyleSheets)
    texts.push(...[...sheet.cssRules].map(({ cssText }) => cssText));
  texts.push(onePageRules);
  // No text of ours ends the element it stands in.
  return texts.join("\n").replaceAll("</", "<\\/");
}

interface FontUse {
  readonly frame: Element;
  readonly base: string;
}

/** Puts the fonts into their rules; a face that is not used or not to be had is left out. */
async function withFonts(text: string, use: FontUse): Promise<string> {
  const faces = [...new Set(text.match(/@font-face\s*\{[^}]*\}/g) ?? [])];
  const filled = await Promise.all(faces.map((face) => filledFace(face, use)));
  return faces.reduce((all, face, index) => all.replaceAll(face, filled[index] ?? ""), text);
}

/** The face of formulas is only needed where one stands. */
const withFormulas = /mono/i;

async function filledFace(face: string, { frame, base }: FontUse): Promise<string> {
  if (withFormulas.test(face) && !frame.querySelector("pre, .listing, .formula")) return "";
  const [whole = "", address = ""] = /url\(\s*["']?([^"')\s]+)["']?\s*\)/.exec(face) ?? [];
  const data = await dataAddress(new URL(address, base).href);
  // Without its font the page is read in a face the reader has.
  return data === undefined ? "" : face.replace(whole, `url(${data})`);
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
