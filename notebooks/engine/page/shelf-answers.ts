import { loadUnits } from "../store/index.ts";
import { type Book, openBook } from "./book.ts";
import { Library } from "./library.ts";
import { mainFigure } from "./moves.ts";
import type { PageOptions } from "./options.ts";
import type { ShelfAnswer } from "./shelf.ts";
import { SideRoom } from "./side-room.ts";

/** No notebook holds up the others for longer than this (milliseconds). */
const longest = 20_000;

/**
 * Works out the first answers of notebooks, one after another, in a room that is ended after. They
 * are not kept: what a room says must never change what is stored. Whoever only looks at the shelf is not kept waiting for it.
 */
export async function findAnswers(
  files: readonly string[],
  options: PageOptions,
  found: (file: string, answer: ShelfAnswer) => void,
): Promise<void> {
  const room = new SideRoom(options);
  for (const file of files) {
    const library = await Library.of(file, options);
    const book = await openBook({
      main: file,
      load: (name) => library.load(name),
      readCsv: options.csv.readCsv,
      loadEntered: async (all) => (await library.loadEntered(all)).entered,
    });
    const answer = book && (await firstAnswer(book, room, options));
    if (answer) found(file, answer);
  }
  room.remove();
}

/** The first pinned answer once it stands; undefined where there is none, or it does not come in time. */
async function firstAnswer(
  book: Book,
  room: SideRoom,
  { storage, today }: PageOptions,
): Promise<ShelfAnswer | undefined> {
  const [first] = book.pinned();
  if (first === undefined) return undefined;
  const units = (await loadUnits(storage)) ?? "us";
  const { main, documents } = book;
  const entered = Object.fromEntries(book.entered);
  const timer = setTimeout(() => room.end(), longest);
  try {
    const { states } = await room.open(
      { main: main.file, documents, entered, units },
      undefined,
      // While long work goes on it may have a value that still gets better.
      (working) => !working.includes(first),
    );
    const figure = mainFigure(states.get(first)?.shown);
    return figure && { title: book.title(first), figure, on: today };
  } catch {
    // The notebook itself says what is wrong with it when it is opened.
    return undefined;
  } finally {
    clearTimeout(timer);
  }
}
