import { button, type Child, el, freshId } from "../dom.ts";
import { splitMark } from "../marks.ts";
import { openPane } from "../pane.ts";

export interface NameOptions {
  readonly title: string;
  /** What stands in the field at first. */
  readonly name: string;
  /** What the button says. */
  readonly words: string;
  readonly about?: readonly Child[];
  /** Gives why the name is refused, in words; undefined where all went well. */
  done(name: string): Promise<string | undefined>;
}

/** A sheet that asks for the name of a plan; a name that is refused stays in the field. */
export function askName({ title, name, words, about = [], done }: NameOptions): {
  close(): void;
  /** What stands in the sheet once it is done. */
  end(...content: readonly HTMLElement[]): void;
} {
  const refusedId = freshId("refused");
  const refused = el("p", { class: "refused", id: refusedId, role: "alert" });
  refused.hidden = true;
  const field = el("input", {
    type: "text",
    id: freshId("name"),
    autocomplete: "off",
    spellcheck: "false",
    maxlength: 80,
  });
  field.value = name;
  const form = el(
    "form",
    { class: "askname", novalidate: true },
    ...about.filter((child) => child !== undefined && child !== false && child !== ""),
    el("label", { for: field.id }, "Its name"),
    el("span", { class: "tray" }, field),
    refused,
    el("p", { class: "acts" }, el("button", { type: "submit", class: "main" }, words)),
  );
  const body = el("div", { class: "panebody" }, form);
  const refuse = (why: string) => {
    refused.hidden = false;
    refused.replaceChildren(splitMark(), el("span", {}, why));
    field.setAttribute("aria-invalid", "true");
    field.setAttribute("aria-describedby", refusedId);
    field.focus();
  };
  const submit = async () => {
    const wanted = field.value.trim();
    if (wanted === "") return refuse("A plan needs a name, as “Cedar, two courses”.");
    const why = await done(wanted);
    if (why !== undefined) refuse(why);
  };
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    submit().catch((error: unknown) =>
      refuse(error instanceof Error ? error.message : String(error)),
    );
  });
  const pane = openPane({ title, content: [body], className: "plan-pane" });
  field.focus();
  field.select();
  return {
    close: pane.close,
    end(...content) {
      const back = button("Back to the notebook", () => pane.close(), { class: "main" });
      body.replaceChildren(
        ...content.filter((one) => !(one instanceof HTMLButtonElement)),
        el(
          "p",
          { class: "acts" },
          back,
          ...content.filter((one) => one instanceof HTMLButtonElement),
        ),
      );
      back.focus();
    },
  };
}
