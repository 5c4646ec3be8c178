import type { Reference, ReferenceName, Units } from "../../types/index.ts";
import { el, freshId } from "../dom.ts";
import type { PageOptions } from "../options.ts";
import { Linker } from "./linker.ts";
import { type ListOptions, listView } from "./list-view.ts";
import { LiveExamples } from "./live-examples.ts";
import { nameView } from "./name-view.ts";
import type { Place } from "./place.ts";
import { searchNames } from "./search.ts";

export interface ViewOptions {
  readonly units: Units;
  /** The level of the headings of its parts. */
  readonly level: 2 | 3;
  /** Told where the reader went: a link was followed, or words were typed. */
  went?(place: Place, how: "followed" | "typed"): void;
}

/** The reference: a field to search it, and under that its contents, what was found, or a name. */
export class ReferenceView {
  readonly element = el("div", { class: "reference" });
  readonly #page: PageOptions;
  readonly #options: ViewOptions;
  readonly #live: LiveExamples;
  readonly #body = el("div", { class: "refbody" });
  readonly #count = el("p", { class: "count", role: "status" });
  readonly #field: HTMLInputElement;
  #reference: Reference | undefined;

  constructor(page: PageOptions, options: ViewOptions) {
    this.#page = page;
    this.#options = options;
    this.#live = new LiveExamples(page, options.units);
    const id = freshId("find");
    this.#field = el("input", { id, type: "search", autocomplete: "off", spellcheck: "false" });
    this.#field.addEventListener("input", () => this.#typed());
    this.#field.addEventListener("keydown", (event) => {
      if (event.key !== "ArrowDown" && event.key !== "Enter") return;
      event.preventDefault();
      this.#body.querySelector<HTMLElement>("ul a")?.focus();
    });
    this.#body.addEventListener("keydown", (event) => this.#along(event));
    const form = el(
      "search",
      { class: "finder" },
      el("label", { for: id }, "Find by name, rule or option"),
      this.#field,
      this.#count,
    );
    this.element.append(form, this.#body);
  }

  /** Shows a place; what was typed stays in the field only where it was searched for. */
  show(place: Place, how: "opened" | "back" | "followed" = "opened"): void {
    this.#field.value = place.find ?? "";
    void this.#draw(place).then(() => {
      if (how === "followed" || (how === "opened" && place.name !== undefined)) this.#toHeading();
    });
  }

  setUnits(units: Units): void {
    this.#live.setUnits(units);
  }

  end(): void {
    this.#live.end();
  }

  #typed(): void {
    const find = this.#field.value.trim();
    const place = find === "" ? {} : { find };
    this.#options.went?.(place, "typed");
    void this.#draw(place);
  }

  async #draw(place: Place): Promise<void> {
    try {
      this.#reference ??= await this.#page.loadReference();
    } catch {
      this.#body.replaceChildren(
        el(
          "p",
          { class: "broken" },
          "The reference could not be fetched. Try again when you are online.",
        ),
      );
      return;
    }
    // Words typed in the meantime count.
    if ((place.find ?? "") !== this.#field.value.trim()) return;
    this.#live.forget();
    this.#body.replaceChildren(...this.#nodes(place, this.#reference));
  }

  #nodes({ name, part, find }: Place, reference: Reference): readonly Node[] {
    const linker = new Linker(reference, (place) => this.#follow(place));
    const list: ListOptions = { reference, linker, level: this.#options.level };
    this.#count.textContent = "";
    if (find !== undefined) {
      const found = searchNames(reference.names, find);
      this.#count.textContent = countWords(found.length);
      return [listView(found, { ...list, isFlat: true })];
    }
    const back = el("p", { class: "back" }, linker.link({}, "All names"));
    if (name !== undefined) {
      const known = reference.names.find((one) => one.name === name);
      if (!known)
        return [back, el("p", { class: "broken" }, `There is no ${name} in the reference.`)];
      return [back, this.#named(known, { reference, linker })];
    }
    if (part === undefined) return [listView(reference.names, list)];
    const title = reference.groups.find((group) => group.name === part)?.title ?? part;
    const names = reference.names.filter(({ group }) => group === part);
    return [
      back,
      el(`h${this.#options.level}`, { tabindex: -1, class: "parttitle" }, title),
      ...names.map((one) => this.#named(one, { reference, linker }, true)),
    ];
  }

  #named(name: ReferenceName, tools: Pick<ListOptions, "reference" | "linker">, isInPart = false) {
    const level = isInPart ? 3 : this.#options.level;
    return nameView(name, { ...tools, sources: this.#page.sources, live: this.#live, level });
  }

  #follow(place: Place): void {
    this.#options.went?.(place, "followed");
    this.show(place, "followed");
  }

  #toHeading(): void {
    const heading = this.#body.querySelector<HTMLElement>("h2, h3");
    const holder = this.element.closest("dialog");
    if (holder) holder.scrollTop = 0;
    else scrollTo(0, 0);
    heading?.focus({ preventScroll: true });
  }

  /** Up and down go along the names found; up from the first goes back to the field. */
  #along(event: KeyboardEvent): void {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step === undefined || !(event.target instanceof HTMLElement)) return;
    const links = [...this.#body.querySelectorAll<HTMLElement>("ul a")];
    const at = links.indexOf(event.target);
    if (at < 0) return;
    event.preventDefault();
    (links[at + step] ?? (step < 0 ? this.#field : event.target)).focus();
  }
}

function countWords(count: number): string {
  if (count === 0) return "Nothing has all these words: try fewer, or a part of one.";
  return count === 1 ? "1 name has all these words" : `${count} names have all these words`;
}
