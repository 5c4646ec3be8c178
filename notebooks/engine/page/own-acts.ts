import { withTitle } from "../document/seldom.ts";
import { removeDocument } from "../store/seldom.ts";
import type { Context } from "./context.ts";
import { button, el } from "./dom.ts";
import type { KeptParts } from "./keep/index.ts";
import type { Library } from "./library.ts";
import { now } from "./now.ts";
import { openPane } from "./pane.ts";
import { askTitle } from "./title-form.ts";

/** Asks for another title of an own notebook. */
export function nameNotebook({ book, editing, say }: Context): void {
  askTitle({
    title: "Give it another name",
    initial: book.main.title,
    act: "Name it so",
    async done(title) {
      editing.edit(new Map([[book.main.file, withTitle(book.main, title)]]));
      say(`It is called ${title} now.`);
      return undefined;
    },
  });
}

/** Takes an own notebook off the shelf; its last states are kept, so that it can be brought back. */
export function putAway({ book, options }: Context, library: Library, kept: KeptParts): void {
  const { file, title } = book.main;
  const wrong = el("p", { class: "broken", role: "alert", hidden: true });
  const put = async () => {
    // What is still on its way would be written after it was taken away.
    await kept.flush();
    const removed = await removeDocument(options.storage, library.place(file), { at: now() });
    if (removed.good) return location.assign("./");
    wrong.textContent = removed.words;
    wrong.hidden = false;
  };
  const pane = openPane({
    title: `Put “${title}” away?`,
    content: [
      el(
        "p",
        {},
        "It leaves the shelf. It can be brought back from there, under “Put away”, with what you entered.",
      ),
      wrong,
      el(
        "p",
        { class: "acts" },
        button("Put it away", () => void put()),
        button("Leave it", () => pane.close()),
      ),
    ],
  });
}
