import { htmlSpace, TinyElement } from "./element.ts";
import { TinyFragment, type TinyNode, TinyText } from "./node.ts";

/**
 * As much of a document as a charting library needs to build its elements where there is no page:
 * in a worker and in Node. Nothing is laid out and nothing loads.
 */
export class TinyDocument {
  readonly nodeType = 9;
  readonly ownerDocument = null;
  readonly documentElement = new TinyElement(this, htmlSpace, "html");
  readonly body = new TinyElement(this, htmlSpace, "body");
  readonly defaultView = {
    document: this,
    addEventListener() {},
    removeEventListener() {},
    getComputedStyle: () => ({}),
  };

  createElement(name: string): TinyElement {
    return new TinyElement(this, htmlSpace, name);
  }

  createElementNS(space: string, name: string): TinyElement {
    return new TinyElement(this, space, name);
  }

  createTextNode(data: unknown): TinyText {
    return new TinyText(this, data);
  }

  createDocumentFragment(): TinyFragment {
    return new TinyFragment(this);
  }

  importNode(node: TinyNode, deep = false): TinyNode {
    return node.cloneNode(deep);
  }

  querySelector(): null {
    return null;
  }

  querySelectorAll(): readonly never[] {
    return [];
  }
}
