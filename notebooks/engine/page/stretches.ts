import { el, setAttribute } from "./dom.ts";

/** A stretch of the page: its head, or what stands under one heading. */
export interface Stretch {
  /** The heading it is named by. */
  readonly heading: HTMLElement | undefined;
  readonly nodes: HTMLElement[];
}

/**
 * Puts stretches into the page, leaving every node that is already in its place untouched: a field
 * that has focus, a drawing, a fold keep what they are while something else is edited.
 */
export class Stretches {
  readonly #page: HTMLElement;
  readonly #elements: HTMLElement[] = [];

  constructor(page: HTMLElement) {
    this.#page = page;
  }

  put(stretches: readonly Stretch[]): void {
    const wanted = stretches.map(({ heading }, index) => {
      const element = this.#element(index);
      setAttribute(element, "aria-labelledby", heading?.id);
      return element;
    });
    // Nodes that go leave first, so that the others need not move to make room.
    stretches.forEach(({ nodes }, index) => {
      takeOut(this.#element(index), new Set(nodes));
    });
    stretches.forEach(({ nodes }, index) => {
      arrange(this.#element(index), nodes);
    });
    takeOut(this.#page, new Set(wanted));
    arrange(this.#page, wanted);
  }

  #element(index: number): HTMLElement {
    const made =
      this.#elements[index] ?? el("section", { class: index === 0 ? "ruled head" : "ruled" });
    this.#elements[index] = made;
    return made;
  }
}

function takeOut(parent: HTMLElement, wanted: ReadonlySet<Node>): void {
  for (const child of [...parent.childNodes]) if (!wanted.has(child)) child.remove();
}

function arrange(parent: HTMLElement, wanted: readonly HTMLElement[]): void {
  wanted.forEach((node, index) => {
    const there = parent.childNodes[index] ?? null;
    if (there !== node) parent.insertBefore(node, there);
  });
}
