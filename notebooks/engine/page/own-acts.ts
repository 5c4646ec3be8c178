import { withTitle } from "../document/seldom.ts";
import { removeDocument } from "../store/seldom.ts";
import type { Context } from "./context.ts";
import { button, el } from "./dom.ts";
import type { Library } from "./library.ts";
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
export function putAway({ book, options }: Context, library: Library): void {
  const file = book.main.file;
  const pane = openPane({
    title: `Put “${book.main.title}” away?`,
    content: [
      el(
        "p",
        {},
        "It leaves the shelf. It can be brought back from there, under “Put away”, with what you entered.",
      ),
      el(
        "p",
        { class: "acts" },
        button("Put it away", () => {
          void removeDocument(options.storage, library.place(file), {
            at: new Date().toISOString(),
          }).then(() => location.assign("./"));
        }),
        button("Leave it", () => pane.close()),
      ),
    ],
  });
}
