import { withTitle } from "../document/seldom.ts";
import { createDocument } from "../store/index.ts";
import type { Context } from "./context.ts";
import { el } from "./dom.ts";
import { now } from "./now.ts";
import { askTitle } from "./title-form.ts";

/** Asks for a name, copies the notebook under it with what is entered in it, and opens the copy. */
export function makeItMine(context: Context): void {
  const { book, options } = context;
  const { main } = book;
  const instead = el("input", { type: "checkbox" });
  const standsIn = el(
    "label",
    { class: "check" },
    instead,
    el(
      "span",
      {},
      `Wherever another notebook takes from this one (${main.file}), let it take from mine`,
    ),
  );
  askTitle({
    title: "Make it mine",
    initial: `My ${lowerFirst(main.title)}`,
    act: "Make it mine",
    // Only where another notebook takes from this one is there anything to choose.
    more: options.notebooks.some(({ file, used }) => file === main.file && used) ? [standsIn] : [],
    async done(title) {
      const file = instead.checked ? main.file : title.toLowerCase();
      const made = await createDocument(options.storage, {
        file,
        taken: instead.checked ? [] : options.notebooks.map(({ file }) => file),
        exact: instead.checked,
        text: withTitle(main, title),
        title,
        origin: { from: "shipped", file: main.file },
        entered: ownEntered(context, file),
        changed: now(),
      });
      if (!made.good) return made.words;
      location.assign(`?notebook=${encodeURIComponent(made.value.place)}`);
      return undefined;
    },
  });
}

/** What is entered in the main document, as under another file; what it uses stays shared. */
function ownEntered({ book }: Context, file: string) {
  const own = `${book.main.file}#`;
  return Object.fromEntries(
    [...book.entered]
      .filter(([id]) => id.startsWith(own))
      .map(([id, value]) => [`${file}#${id.slice(own.length)}`, value]),
  );
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
