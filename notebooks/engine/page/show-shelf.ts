import { createDocument, type DocumentRecord, listDocuments } from "../store/index.ts";
import { bringBackDocument, listRemoved } from "../store/seldom.ts";
import { button, el } from "./dom.ts";
import { houseHead } from "./head-parts.ts";
import { shelfKeepActs } from "./keep/index.ts";
import { now } from "./now.ts";
import { largestNotebook, openFile } from "./open-file.ts";
import type { PageOptions } from "./options.ts";
import { pickFile, readTextFile } from "./pick-file.ts";
import { type ShelfNotebook, shelf } from "./shelf.ts";
import { findAnswers } from "./shelf-answers.ts";
import { askTitle } from "./title-form.ts";
import { tellNext } from "./told-next.ts";

/** Draws the shelf: the reader's own notebooks, then the shipped ones. */
export async function showShelf(options: PageOptions, trouble?: string): Promise<void> {
  const { root, notebooks, today } = options;
  document.title = "The shelf · Bedwright";
  const said = el("p", { class: "broken troubles", role: "alert" }, trouble);
  said.hidden = trouble === undefined;
  const say = (words: string) => {
    said.textContent = words;
    said.hidden = false;
  };
  const { documents, troubles } = await listDocuments(options.storage);
  if (troubles.length > 0) say(troubles.join(" "));
  const own = documents.map(ownBook);
  const shown = shelf({
    own,
    shipped: notebooks.filter(({ file }) => own.every((mine) => mine.file !== file)),
    today,
    newNotebook: () => newNotebook(options),
    openFile: () => void openPicked(options, say),
    more: [
      ...(await putAwayList(options, say)),
      el("p", { class: "acts" }, ...shelfKeepActs(options, say)),
    ],
  });
  root.replaceChildren(
    el("a", { class: "skip", href: "#page" }, "Skip to the page"),
    houseHead(),
    said,
    shown.element,
  );
  const files = [...own, ...notebooks].map(({ file }) => file);
  await findAnswers([...new Set(files)], options, (file, answer) => shown.answer(file, answer));
}

/** Notebooks that were put away, each to be brought back. */
async function putAwayList(
  { storage }: PageOptions,
  say: (words: string) => void,
): Promise<readonly HTMLElement[]> {
  const removed = await listRemoved(storage);
  if (removed.length === 0) return [];
  const lines = removed.map(({ file, title, at }) => {
    const back = button("Bring it back", () => {
      void bringBackDocument(storage, file).then((brought) => {
        if (brought.good) location.reload();
        else say(brought.words);
      });
    });
    back.append(el("span", { class: "vh" }, `: ${title}`));
    return el(
      "li",
      {},
      el("span", {}, el("b", {}, title), el("small", {}, ` put away ${inWords(at)}`)),
      back,
    );
  });
  return [
    el("details", { class: "putaway" }, el("summary", {}, "Put away"), el("ul", {}, ...lines)),
  ];
}

function ownBook({ place, title, origin, changed }: DocumentRecord): ShelfNotebook {
  const about = {
    shipped: origin.from === "shipped" ? `Yours, made from ${origin.file}` : "",
    new: "Yours, begun here",
    file: origin.from === "file" ? `Opened from the file ${origin.name}` : "",
    link: "Opened from a link",
  }[origin.from];
  return { file: place, title, about: `${about}; changed ${inWords(changed)}` };
}

function inWords(instant: string): string {
  return new Date(instant).toLocaleDateString("en", {
    day: "numeric",
    month: "long",
    year: "numeric",
  });
}

function newNotebook({ storage, notebooks }: PageOptions): void {
  askTitle({
    title: "New notebook",
    initial: "My notebook",
    act: "Begin it",
    async done(title) {
      const made = await createDocument(storage, {
        file: title.toLowerCase(),
        taken: notebooks.map(({ file }) => file),
        text: firstText(title),
        title,
        origin: { from: "new" },
        changed: now(),
      });
      if (!made.good) return made.words;
      location.assign(`?notebook=${encodeURIComponent(made.value.place)}&write`);
      return undefined;
    },
  });
}

/** A beginning that already works something out. */
function firstText(title: string): string {
  return `# ${title}

Words stand between the cells, and figures in sentences: a bed \`fig boardLength\` long and
\`fig bedWidth\` wide covers \`fig area\`.

\`\`\`js cell boardLength "Length of a board"
lengthEntry("8 ft", { min: "1 ft", max: "20 ft" })
\`\`\`

\`\`\`js cell bedWidth "Width of the bed"
lengthEntry("4 ft", { min: "1 ft", max: "8 ft" })
\`\`\`

\`\`\`js cell area pinned "Area of the bed"
boardLength * bedWidth
\`\`\`
`;
}

async function openPicked(options: PageOptions, say: (words: string) => void): Promise<void> {
  const picked = await pickFile(".md,.markdown,.txt,text/markdown,text/plain");
  if (!picked) return;
  const read = await readTextFile(picked, largestNotebook);
  const opened = read.ok ? await openFile(read, options) : read;
  if (!opened.ok) return say(opened.words);
  if (opened.remarks.length > 0) tellNext(opened.remarks);
  location.assign(`?notebook=${encodeURIComponent(opened.file)}`);
}
