import { el } from "./dom.ts";

/**
 * A printed figure with its fractions set as fractions: "3 1/2 in" has no glyph for the sixteenths,
 * so they are written with the fraction slash in an element that asks the face to build them. The
 * text copied out of the page is still "3 1⁄2 in".
 */
export function figureNodes(text: string): (Node | string)[] {
  const nodes: (Node | string)[] = [];
  let at = 0;
  for (const found of text.matchAll(fraction)) {
    const [whole, before = "", over, under] = found;
    nodes.push(text.slice(at, found.index) + before.trimEnd());
    if (before !== "" && /\d\s$/.test(before)) nodes.push(el("span", { class: "sp" }, " "));
    nodes.push(el("span", { class: "fr" }, `${over}⁄${under}`));
    at = found.index + whole.length;
  }
  nodes.push(text.slice(at));
  return nodes.filter((node) => node !== "");
}

// A nominal section such as 5/4x6 is no fraction, nor is a date; a fraction has a space, a quote
// mark or the end after it.
const fraction = /(?<![\d/.])(\d+\s)?(\d{1,2})[/⁄](2|3|4|8|16|32|64)(?=$|[\s″"′',;–)])/g;

/** "1.91 m³" as its digits and its unit; a text that has no such end stays whole. */
export function splitUnit(text: string): readonly [number: string, unit: string] {
  const found = /^(.*[\d⁄½¼¾])\s+([^\d\s]\S*(?:\s[^\d\s]\S*)?)$/.exec(text);
  return found ? [found[1] ?? text, found[2] ?? ""] : [text, ""];
}
