import type { CellId } from "../../types/index.ts";
import { el, freshId } from "../dom.ts";

export interface Option<T extends string> {
  readonly value: T;
  readonly words: string;
}

/** A labelled list to choose from; what is chosen stays. */
export function chooser<T extends string>(
  label: string,
  options: readonly Option<T>[],
  { chosen, choose }: { readonly chosen: T | undefined; choose(value: T): void },
): HTMLElement {
  const id = freshId("choose");
  const select = el(
    "select",
    { id },
    ...options.map(({ value, words }) =>
      el("option", { value, selected: value === chosen }, words),
    ),
  );
  select.addEventListener("change", () => choose(select.value as T));
  return el(
    "p",
    { class: "chooser" },
    el("label", { for: id }, label),
    el("span", { class: "ctl" }, select),
  );
}

/** A labelled list whose choice does something: it goes back to its first words after. */
export function doer<T extends string>(
  label: string,
  first: string,
  options: readonly Option<T>[],
  act: (value: T) => void,
): HTMLElement {
  const id = freshId("do");
  const select = el(
    "select",
    { id },
    el("option", { value: "" }, first),
    ...options.map(({ value, words }) => el("option", { value }, words)),
  );
  select.addEventListener("change", () => {
    const { value } = select;
    select.value = "";
    if (value !== "") act(value as T);
  });
  return el(
    "p",
    { class: "chooser" },
    el("label", { for: id }, label),
    el("span", { class: "ctl" }, select),
  );
}

/** Which of several are shown, at most so many at a time. */
export function ticks(
  legend: string,
  options: readonly Option<string>[],
  {
    ticked,
    most = Number.POSITIVE_INFINITY,
    tick,
  }: {
    readonly ticked: ReadonlySet<string>;
    readonly most?: number;
    tick(value: string, on: boolean): void;
  },
): HTMLElement {
  const count = options.filter(({ value }) => ticked.has(value)).length;
  const isFull = count >= most;
  const labels = options.map(({ value, words }) => {
    const on = ticked.has(value);
    const input = el("input", { type: "checkbox", value, checked: on, disabled: isFull && !on });
    input.addEventListener("change", () => tick(value, input.checked));
    return el("label", { class: isFull && !on ? "off" : undefined }, input, el("span", {}, words));
  });
  const full =
    isFull && count < options.length
      ? el("span", { class: "hint" }, `${most} at most at this width: take one off to see another.`)
      : undefined;
  return el("fieldset", { class: "ticks" }, el("legend", {}, legend), ...labels, full);
}

/** Two views of the same, one of them chosen. */
export function either(
  legend: string,
  words: readonly [off: string, on: string],
  { on, set }: { readonly on: boolean; set(on: boolean): void },
): HTMLElement {
  const name = freshId("either");
  const labels = words.map((text, index) => {
    const is = index === 1;
    const input = el("input", { type: "radio", name, checked: is === on });
    input.addEventListener("change", () => set(is));
    return el("label", {}, input, el("span", {}, text));
  });
  return el("fieldset", { class: "pick plainpick" }, el("legend", {}, legend), ...labels);
}

const drawn = new WeakMap<Element, string>();

/**
 * Draws what stands in an element anew where what it is made from is other than it was; left alone
 * else, so that what is open or has focus stays so. What had focus gives it to its like.
 */
export function drawOnce(
  element: HTMLElement,
  from: unknown,
  make: () => readonly HTMLElement[],
): void {
  const key = JSON.stringify(from);
  if (drawn.get(element) === key) return;
  drawn.set(element, key);
  const all = () => [...element.querySelectorAll<HTMLElement>("input, select, button")];
  const at = all().indexOf(document.activeElement as HTMLElement);
  element.replaceChildren(...make());
  all()[at]?.focus();
}

/** Cells by what people call them, those of other notebooks with their file. */
export function cellOptions(
  ids: readonly CellId[],
  title: (id: CellId) => string,
): readonly Option<CellId>[] {
  return ids.map((value) => ({ value, words: title(value) }));
}
