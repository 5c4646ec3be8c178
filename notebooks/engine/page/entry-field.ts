import type { ShownEntry } from "../types/index.ts";
import { el, freshId, setAttribute } from "./dom.ts";

export interface FieldOptions {
  /** In a sentence the tray hugs its text; in a row it fills the figures' column. */
  readonly place: "row" | "sentence";
  readonly name: string;
  entered(text: string): void;
}

/**
 * The field of one entry. It is made once and then only shown anew; `text` is what the page knows to
 * be entered, so what is being typed in it is never touched.
 */
export interface EntryField {
  readonly element: HTMLElement;
  /** What labels point at; undefined for choices, which name themselves. */
  readonly control: HTMLElement | undefined;
  show(entry: ShownEntry, text: string): void;
  /** Marks the field as refused, described by the element of this id. */
  refuse(describedBy: string | undefined): void;
}

export function entryField(entry: ShownEntry, options: FieldOptions): EntryField {
  const choices = choicesOf(entry);
  if (!choices) return textField(entry, options);
  return options.place === "row" && fitsSideBySide(choices)
    ? pickField(choices, options)
    : selectField(choices, options);
}

type Choices = readonly { readonly text: string; readonly label: string }[];

function choicesOf({ entry, options }: ShownEntry): Choices | undefined {
  if (entry === "yes-no")
    return [
      { text: "yes", label: "yes" },
      { text: "no", label: "no" },
    ];
  return entry === "choice" ? (options ?? []) : undefined;
}

function fitsSideBySide(choices: Choices): boolean {
  const letters = choices.reduce((sum, { label }) => sum + label.length + 2, 0);
  return choices.length <= 3 && letters <= 18;
}

/** A line of text in a tray, with its unit at the right. */
function textField(entry: ShownEntry, { place, name, entered }: FieldOptions): EntryField {
  const control = el("input", {
    type: "text",
    autocomplete: "off",
    spellcheck: "false",
    enterkeyhint: "done",
    inputmode: entry.entry === "number" || entry.entry === "percent" ? "decimal" : undefined,
    "aria-label": place === "sentence" ? name : undefined,
    id: place === "row" ? freshId("entry") : undefined,
  });
  const unit = el("span", { class: "unit" });
  const element = el("span", { class: place === "row" ? "tray" : "tray in" }, control, unit);
  control.addEventListener("input", () => {
    sizeToText(control);
    entered(control.value);
  });
  return {
    element,
    control,
    show({ unit: words = "" }, text) {
      if (control.value !== text) control.value = text;
      if (unit.textContent !== words) unit.textContent = words;
      unit.hidden = words === "" || hasUnit(control.value);
      sizeToText(control);
    },
    refuse: (by) => refuse(element, control, by),
  };
}

/** The unit beside the field is the one a bare number takes; one that is typed stands alone. */
function hasUnit(text: string): boolean {
  return /[\p{L}%$€£'"′″]/u.test(text);
}

/** Where a browser can't size a field by its content, its count of letters does. */
function sizeToText(control: HTMLInputElement): void {
  control.size = Math.max(2, control.value.length);
}

/** Trays side by side; the chosen one is full. */
function pickField(choices: Choices, { name, entered }: FieldOptions): EntryField {
  const group = freshId("pick");
  const inputs = choices.map(({ text }) => {
    const input = el("input", { type: "radio", name: group, value: text });
    input.addEventListener("change", () => entered(text));
    return input;
  });
  const labels = inputs.map((input, index) =>
    el("label", {}, input, el("span", {}, choices[index]?.label ?? "")),
  );
  const element = el("fieldset", { class: "pick" }, el("legend", { class: "vh" }, name), ...labels);
  return {
    element,
    control: undefined,
    show(_, text) {
      for (const input of inputs) input.checked = sameWord(input.value, text);
    },
    refuse(by) {
      setAttribute(element, "aria-describedby", by);
      element.classList.toggle("wrong", by !== undefined);
    },
  };
}

function selectField(choices: Choices, options: FieldOptions): EntryField {
  const { place, name, entered } = options;
  const control = el("select", {
    "aria-label": place === "sentence" ? name : undefined,
    id: place === "row" ? freshId("entry") : undefined,
  });
  const element = el(
    "span",
    { class: place === "row" ? "tray choose" : "tray in choose" },
    control,
  );
  let known = "";
  control.addEventListener("change", () => entered(control.value));
  return {
    element,
    control,
    show(entry, text) {
      const now = choicesOf(entry) ?? choices;
      const key = JSON.stringify(now);
      if (key !== known)
        control.replaceChildren(
          ...now.map(({ text, label }) => el("option", { value: text }, label)),
        );
      known = key;
      const chosen = now.find((one) => sameWord(one.text, text));
      // What was typed elsewhere and is none of the choices stays in sight until one is chosen.
      const foreign = control.querySelector("option[data-foreign]");
      foreign?.remove();
      if (!chosen) control.prepend(el("option", { value: text, "data-foreign": true }, text));
      control.value = chosen?.text ?? text;
    },
    refuse: (by) => refuse(element, control, by),
  };
}

function sameWord(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase();
}

function refuse(tray: HTMLElement, control: HTMLElement, by: string | undefined): void {
  tray.classList.toggle("wrong", by !== undefined);
  setAttribute(control, "aria-invalid", by === undefined ? undefined : "true");
  setAttribute(control, "aria-describedby", by);
}
