import type { TinyDocument } from "./document.ts";
import { InlineStyle, styleByName } from "./inline-style.ts";
import { TinyNode } from "./node.ts";

export const svgSpace = "http://www.w3.org/2000/svg";
export const htmlSpace = "http://www.w3.org/1999/xhtml";

export class TinyElement extends TinyNode {
  readonly nodeType = 1;
  readonly namespaceURI: string;
  readonly localName: string;
  readonly style: InlineStyle = styleByName(new InlineStyle());
  readonly #attributes = new Map<string, string>();

  constructor(ownerDocument: TinyDocument, space: string, name: string) {
    super(ownerDocument);
    this.namespaceURI = space;
    this.localName = name;
  }

  get tagName(): string {
    return this.namespaceURI === htmlSpace ? this.localName.toUpperCase() : this.localName;
  }

  get nodeName(): string {
    return this.tagName;
  }

  get attributes(): readonly { readonly name: string; readonly value: string }[] {
    const { cssText } = this.style;
    const own = [...this.#attributes].map(([name, value]) => ({ name, value }));
    return cssText === "" ? own : [...own, { name: "style", value: cssText }];
  }

  getAttribute(name: string): string | null {
    if (name === "style") return this.style.cssText === "" ? null : this.style.cssText;
    return this.#attributes.get(name) ?? null;
  }

  hasAttribute(name: string): boolean {
    return this.getAttribute(name) !== null;
  }

  setAttribute(name: string, value: unknown): void {
    if (name === "style") this.style.cssText = String(value);
    else this.#attributes.set(name, String(value));
  }

  setAttributeNS(_space: string | null, name: string, value: unknown): void {
    this.setAttribute(name, value);
  }

  removeAttribute(name: string): void {
    if (name === "style") this.style.cssText = "";
    this.#attributes.delete(name);
  }

  removeAttributeNS(_space: string | null, name: string): void {
    this.removeAttribute(name);
  }

  get id(): string {
    return this.getAttribute("id") ?? "";
  }

  set id(id: string) {
    this.setAttribute("id", id);
  }

  get className(): string {
    return this.getAttribute("class") ?? "";
  }

  set className(names: string) {
    this.setAttribute("class", names);
  }

  get classList() {
    const names = () => this.className.split(/\s+/).filter((name) => name !== "");
    return {
      add: (name: string) => {
        this.className = [...new Set([...names(), name])].join(" ");
      },
      remove: (name: string) => {
        this.className = names()
          .filter((own) => own !== name)
          .join(" ");
      },
      contains: (name: string) => names().includes(name),
    };
  }

  get children(): readonly TinyElement[] {
    return this.childNodes.filter((child) => child instanceof TinyElement);
  }

  get firstElementChild(): TinyElement | null {
    return this.children[0] ?? null;
  }

  /** By `*`, an element's name, `.class` or `#id`: all that drawing asks for. */
  matches(selector: string): boolean {
    if (selector.startsWith(".")) return this.classList.contains(selector.slice(1));
    if (selector.startsWith("#")) return this.id === selector.slice(1);
    return selector === "*" || selector.toLowerCase() === this.localName.toLowerCase();
  }

  querySelectorAll(selector: string): readonly TinyElement[] {
    return this.children.flatMap((child) => [
      ...(child.matches(selector) ? [child] : []),
      ...child.querySelectorAll(selector),
    ]);
  }

  querySelector(selector: string): TinyElement | null {
    return this.querySelectorAll(selector)[0] ?? null;
  }

  cloneAlone(): TinyElement {
    const clone = new TinyElement(this.ownerDocument, this.namespaceURI, this.localName);
    for (const { name, value } of this.attributes) clone.setAttribute(name, value);
    return clone;
  }
}
