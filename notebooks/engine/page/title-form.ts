import { button, el, freshId } from "./dom.ts";
import { openPane } from "./pane.ts";

export interface TitleForm {
  readonly title: string;
  readonly initial: string;
  /** What its button says. */
  readonly act: string;
  readonly more?: readonly Node[];
  /** Gives words where the title can't be taken. */
  done(title: string): Promise<string | undefined>;
}

/** Asks for the title of a notebook in a sheet over the page. */
export function askTitle({ title, initial, act, more = [], done }: TitleForm): void {
  const id = freshId("title");
  const input = el("input", {
    id,
    type: "text",
    value: initial,
    maxlength: 120,
    autocomplete: "off",
  });
  const wrong = el("p", { class: "broken", role: "alert", hidden: true });
  const form = el(
    "form",
    { class: "ask" },
    el("label", { for: id }, "What is it called?"),
    el("span", { class: "tray" }, input),
    ...more,
    wrong,
    el(
      "p",
      { class: "acts" },
      el("button", { type: "submit", class: "main" }, act),
      button("Leave it", () => pane.close()),
    ),
  );
  const pane = openPane({ title, content: [form] });
  input.select();
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const words = input.value.trim();
    const told = words === "" ? Promise.resolve("Write a name first.") : done(words);
    void told.then((why) => {
      if (why === undefined) return pane.close();
      wrong.textContent = why;
      wrong.hidden = false;
      input.focus();
    });
  });
}
