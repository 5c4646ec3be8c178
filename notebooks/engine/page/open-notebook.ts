import { Keeper, loadUnits, StateKeeper } from "../store/index.ts";
import { openBook } from "./book.ts";
import { Library } from "./library.ts";
import { NotebookPage } from "./notebook-page.ts";
import { now } from "./now.ts";
import type { PageOptions } from "./options.ts";
import { RoomLink } from "./room-link.ts";
import { toldBefore } from "./told-next.ts";

/** Opens a notebook in the page; gives false where there is no such file. */
export async function openNotebook(file: string, options: PageOptions): Promise<boolean> {
  const { storage } = options;
  let open: NotebookPage | undefined;
  let brokeEarly: string | undefined;
  const link = new RoomLink({
    engineUrl: options.engineUrl,
    code: options.code,
    received: (message) => open?.driver.received(message),
    broke(why) {
      if (open) open.driver.broke(why);
      else brokeEarly = why;
    },
    died: () => open?.driver.died(),
  });
  link.prepare();
  const troubles = [...toldBefore(), ...(options.storageTrouble ? [options.storageTrouble] : [])];
  const trouble = (words: string) => {
    if (open) open.showTroubles([words]);
    else troubles.push(words);
  };
  const library = await Library.of(file, options);
  const keeper = new Keeper(storage, trouble, {
    journal: options.journal,
    scope: library.scope,
    others: options.others,
    now,
    later: (act) => void setTimeout(act, 5_000),
    safe: () => open?.safeAgain(),
    stands: (record) => open?.following.stands(record),
  });
  await keeper.takeUp();
  const [book, units = "us"] = await Promise.all([
    openBook({
      main: file,
      async load(name) {
        const text = await library.load(name);
        // What a page that ended could not write, as on a full disk, is newer than what is there.
        return keeper.textOnItsWay(library.place(name)) ?? text;
      },
      readCsv: options.csv.readCsv,
      async loadEntered(files) {
        const loaded = await keeper.load(files);
        troubles.push(...loaded.troubles);
        return loaded.entered;
      },
    }),
    loadUnits(storage),
  ]);
  troubles.push(...library.troubles);
  if (!book) {
    link.remove();
    return false;
  }
  const states = new StateKeeper(storage, trouble);
  open = new NotebookPage(book, link, { units, troubles, keeper, states, library, page: options });
  if (brokeEarly !== undefined) open.driver.broke(brokeEarly);
  return true;
}
