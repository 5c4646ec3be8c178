import type { CellId } from "../types/index.ts";
import { partsOf } from "./book.ts";
import type { Context } from "./context.ts";
import { button, el } from "./dom.ts";
import type { OpenSlip } from "./edit/open-slip.ts";

/** The slips that are open on the page. */
const open = new Set<OpenSlip>();
let isTold = false;

/** Something about cells has changed: open slips show it, all at once. */
export function slipsFollow(): void {
  if (isTold || open.size === 0) return;
  isTold = true;
  queueMicrotask(() => {
    isTold = false;
    for (const slip of open) {
      if (slip.element.isConnected) slip.update();
      else {
        // Its cell was taken out or has another name.
        open.delete(slip);
        slip.end();
      }
    }
  });
}

/** A cell's name, over it in the writing view: choosing it opens the cell's slip. */
export class CellName {
  readonly element: HTMLButtonElement;
  /** Where the slip is laid. */
  readonly holder = el("div", { class: "opened" });
  readonly #id: CellId;
  readonly #context: Context;
  #slip: OpenSlip | undefined;
  #isAsked = false;

  constructor(id: CellId, context: Context) {
    this.#id = id;
    this.#context = context;
    const [, name] = partsOf(id);
    this.element = button(name, () => this.#toggle(), {
      class: "cellname",
      "aria-expanded": "false",
    });
    this.element.append(el("span", { class: "vh" }, ", the cell"));
  }

  #toggle(): void {
    if (this.#slip) this.#close();
    else if (!this.#isAsked) void this.#open();
  }

  async #open(): Promise<void> {
    this.#isAsked = true;
    try {
      const { openSlip } = await import("./edit/open-slip.ts");
      this.#show(await openSlip(this.#id, this.#context, () => this.#close()));
    } catch {
      this.#context.say("The editor could not be fetched. Try again when you are online.");
    }
    this.#isAsked = false;
  }

  #show(slip: OpenSlip): void {
    this.#slip = slip;
    open.add(slip);
    this.holder.replaceChildren(slip.element);
    this.#mark(true);
    slip.update();
    slip.element.scrollIntoView({ block: "nearest" });
    slip.focus();
  }

  #close(): void {
    const slip = this.#slip;
    if (!slip) return;
    this.#slip = undefined;
    open.delete(slip);
    slip.end();
    this.holder.replaceChildren();
    this.#mark(false);
    this.element.focus();
  }

  #mark(isOpen: boolean): void {
    this.element.setAttribute("aria-expanded", String(isOpen));
    this.holder.parentElement?.classList.toggle("isopen", isOpen);
  }
}
