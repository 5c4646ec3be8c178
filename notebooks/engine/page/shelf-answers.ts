import { loadUnits } from "../store/index.ts";
import type { FromRoom } from "../types/index.ts";
import { type Book, openBook } from "./book.ts";
import { FirstAnswer } from "./first-answer.ts";
import { Library } from "./library.ts";
import type { PageOptions } from "./options.ts";
import { RoomLink } from "./room-link.ts";
import type { ShelfAnswer } from "./shelf.ts";

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
  if (files.length === 0) return;
  let hear: (message: FromRoom) => void = () => undefined;
  let broke = () => undefined;
  const link = new RoomLink({
    engineUrl: options.engineUrl,
    code: options.code,
    received: (message) => hear(message),
    broke: () => broke(),
  });
  for (const file of files) {
    const library = await Library.of(file, options);
    const book = await openBook({
      main: file,
      load: (name) => library.load(name),
      readCsv: options.csv.readCsv,
      loadEntered: async (all) => (await library.loadEntered(all)).entered,
    });
    if (!book || book.pinned().length === 0) continue;
    const answer = await new Promise<ShelfAnswer | undefined>((done) => {
      const timer = setTimeout(() => done(undefined), longest);
      broke = () => void done(undefined);
      const answers = new FirstAnswer(book, options.today);
      hear = (message) => {
        const answer = answers.heard(message);
        if (answer === "not yet") return;
        clearTimeout(timer);
        done(answer);
      };
      start(link, book, options).catch(() => done(undefined));
    });
    link.end();
    if (answer) found(file, answer);
  }
  link.remove();
}

async function start(link: RoomLink, book: Book, options: PageOptions): Promise<void> {
  const units = (await loadUnits(options.storage)) ?? "us";
  const extras = Object.keys(options.code.extras).filter((name) => book.names(name));
  await link.start(extras, [
    {
      kind: "open",
      session: 1,
      main: book.main.file,
      documents: Object.fromEntries(book.documents),
      entered: Object.fromEntries(book.entered),
      surroundings: { units, today: options.today },
    },
  ]);
}
