export type Child = Node | string | undefined | false;
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** Makes an element. An attribute that is `false` or undefined is left out, `true` is empty. */
export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  setAttributes(element, attributes);
  append(element, children);
  return element;
}

const svgSpace = "http://www.w3.org/2000/svg";

/** Makes an SVG element of ours, as the marks beside words. */
export function svgEl(
  tag: string,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElement {
  const element = document.createElementNS(svgSpace, tag);
  setAttributes(element, attributes);
  append(element, children);
  return element;
}

export function setAttributes(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) setAttribute(element, name, value);
}

/** Sets, or with `false` or undefined removes, one attribute; leaves it alone when it is so already. */
export function setAttribute(
  element: Element,
  name: string,
  value: string | number | boolean | undefined,
): void {
  if (value === undefined || value === false) {
    if (element.hasAttribute(name)) element.removeAttribute(name);
    return;
  }
  const text = value === true ? "" : String(value);
  if (element.getAttribute(name) !== text) element.setAttribute(name, text);
}

function append(element: Element, children: readonly Child[]): void {
  for (const child of children) if (child !== undefined && child !== false) element.append(child);
}

/** A button that says what happens. */
export function button(words: string, act: () => void, attributes: Attributes = {}) {
  const made = el("button", { type: "button", ...attributes }, words);
  made.addEventListener("click", act);
  return made;
}

/** A name that may stand in an `id`, from any text. */
export function idFrom(...parts: readonly string[]): string {
  return parts.join("-").replace(/[^\p{L}\p{N}_-]+/gu, "-");
}

let counted = 0;

/** An `id` nobody else has. */
export function freshId(what: string): string {
  counted += 1;
  return `${what}-${counted}`;
}
