import type { Reference } from "../../types/index.ts";
import { el } from "../dom.ts";
import { addressOf, type Place } from "./place.ts";

/** Makes links within the reference: plain ones have an address, the view follows them in place. */
export class Linker {
  readonly #known: ReadonlySet<string>;
  readonly #go: (place: Place) => void;

  constructor({ names }: Reference, go: (place: Place) => void) {
    this.#known = new Set(names.map(({ name }) => name));
    this.#go = go;
  }

  link(place: Place, ...inside: readonly (Node | string)[]): HTMLAnchorElement {
    const link = el("a", { href: addressOf(place) }, ...inside);
    link.addEventListener("click", (event) => {
      if (event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
      event.preventDefault();
      this.#go(place);
    });
    return link;
  }

  /** A text of code in which the names that the reference has are links; its own name is not. */
  linked(code: string, own?: string): (Node | string)[] {
    return code
      .split(/([\p{L}_$][\p{L}\p{N}_$]*)/u)
      .map((part) =>
        part !== own && this.#known.has(part) ? this.link({ name: part }, part) : part,
      );
  }
}
