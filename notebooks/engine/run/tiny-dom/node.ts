import type { TinyDocument } from "./document.ts";

/** What all nodes have: a place among others. */
export abstract class TinyNode {
  abstract readonly nodeType: 1 | 3 | 11;
  readonly ownerDocument: TinyDocument;
  parentNode: TinyNode | null = null;
  childNodes: TinyNode[] = [];

  constructor(ownerDocument: TinyDocument) {
    this.ownerDocument = ownerDocument;
  }

  abstract cloneAlone(): TinyNode;

  cloneNode(deep = false): TinyNode {
    const clone = this.cloneAlone();
    if (deep) for (const child of this.childNodes) clone.appendChild(child.cloneNode(true));
    return clone;
  }

  get firstChild(): TinyNode | null {
    return this.childNodes[0] ?? null;
  }

  get lastChild(): TinyNode | null {
    return this.childNodes.at(-1) ?? null;
  }

  get nextSibling(): TinyNode | null {
    return this.#sibling(1);
  }

  get previousSibling(): TinyNode | null {
    return this.#sibling(-1);
  }

  #sibling(step: 1 | -1): TinyNode | null {
    const among = this.parentNode?.childNodes ?? [];
    const at = among.indexOf(this);
    return at < 0 ? null : (among[at + step] ?? null);
  }

  /** Never part of a page: what is drawn here is sent away as plain data. */
  get isConnected(): boolean {
    return false;
  }

  get textContent(): string {
    return this.childNodes.map((child) => child.textContent).join("");
  }

  set textContent(text: string | null) {
    for (const child of this.childNodes) child.parentNode = null;
    this.childNodes = [];
    if (text !== null && text !== "") this.appendChild(this.ownerDocument.createTextNode(text));
  }

  contains(other: TinyNode | null): boolean {
    for (let node = other; node !== null; node = node.parentNode) if (node === this) return true;
    return false;
  }

  insertBefore<N extends TinyNode>(child: N, before: TinyNode | null): N {
    if (child.nodeType === 11) {
      for (const part of [...child.childNodes]) this.insertBefore(part, before);
      return child;
    }
    child.remove();
    const at = before === null ? -1 : this.childNodes.indexOf(before);
    this.childNodes.splice(at < 0 ? this.childNodes.length : at, 0, child);
    child.parentNode = this;
    return child;
  }

  appendChild<N extends TinyNode>(child: N): N {
    return this.insertBefore(child, null);
  }

  append(...parts: readonly (TinyNode | string)[]): void {
    for (const part of parts) this.appendChild(this.#nodeOf(part));
  }

  prepend(...parts: readonly (TinyNode | string)[]): void {
    const { firstChild } = this;
    for (const part of parts) this.insertBefore(this.#nodeOf(part), firstChild);
  }

  #nodeOf(part: TinyNode | string): TinyNode {
    return part instanceof TinyNode ? part : this.ownerDocument.createTextNode(part);
  }

  removeChild<N extends TinyNode>(child: N): N {
    const at = this.childNodes.indexOf(child);
    if (at >= 0) this.childNodes.splice(at, 1);
    child.parentNode = null;
    return child;
  }

  remove(): void {
    this.parentNode?.removeChild(this);
  }

  replaceChild<N extends TinyNode>(child: TinyNode, old: N): N {
    this.insertBefore(child, old);
    return this.removeChild(old);
  }

  replaceWith(node: TinyNode): void {
    this.parentNode?.replaceChild(node, this);
  }

  // Nothing happens to a drawing that is only made: listeners are taken and never called.
  addEventListener(): void {}
  removeEventListener(): void {}
  dispatchEvent(): boolean {
    return true;
  }
}

export class TinyText extends TinyNode {
  readonly nodeType = 3;
  data: string;

  constructor(ownerDocument: TinyDocument, data: unknown) {
    super(ownerDocument);
    this.data = String(data);
  }

  cloneAlone(): TinyText {
    return new TinyText(this.ownerDocument, this.data);
  }

  override get textContent(): string {
    return this.data;
  }

  override set textContent(text: string | null) {
    this.data = text ?? "";
  }
}

export class TinyFragment extends TinyNode {
  readonly nodeType = 11;

  cloneAlone(): TinyFragment {
    return new TinyFragment(this.ownerDocument);
  }
}
