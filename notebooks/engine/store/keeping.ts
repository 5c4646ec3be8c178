import type { CellId, Entered } from "../types/index.ts";
import { entriesAstray, textAstray } from "./astray.ts";
import type { UnsafeText } from "./journal.ts";
import type { KeeperOptions, KeepingTrouble } from "./keeper-options.ts";
import { loadAllEntered } from "./loading.ts";
import { fileAt, fileOfCell, nameOfCell, placedCell, placeOf, type Scope } from "./place.ts";
import type { EnteredValue, StateReason } from "./record-types.ts";
import type { Storage } from "./storage.ts";
import { noOtherTabs, type OtherTabs } from "./tabs.ts";
import { Waiting } from "./waiting.ts";
import { journalFull, notKept, textElsewhere, typedOver } from "./words.ts";
import { byPlace, type Changes, sameValue, writeEntries } from "./write-entries.ts";
import { writeText } from "./write-text.ts";

/**
 * What came of writing: `left` may not be written over and is not tried again, but held in the
 * journal; `failed` is tried again.
 */
type Came = "written" | "left" | "failed";

/**
 * Keeps what is entered and written: a change is written at once, and what comes while it is being
 * written together after it. Entries go cell by cell into what is there, so that another tab's other
 * cells are left alone; a text only over the revision it was made from. A record from a newer
 * version, or one that can't be read, is never written over.
 */
export class Keeper {
  readonly #storage: Storage;
  readonly #trouble: KeepingTrouble;
  readonly #options: KeeperOptions;
  readonly #scope: Scope;
  readonly #others: OtherTabs;
  readonly #waiting: Waiting;
  /** What cells held when this page last saw them, by place and name; undefined before it has looked. */
  #seen: Map<CellId, EnteredValue | undefined> | undefined;
  #files: readonly string[] = [];
  /** The revisions of texts that this page last wrote, and that it shows, by place. */
  readonly #wrote = new Map<string, number>();
  readonly #shown = new Map<string, number>();
  /** Texts that another tab's stands instead of, and the state they go to, by place. */
  readonly #astray = new Map<string, number | undefined>();
  #writing: Promise<void> | undefined;
  #troubled = false;
  #comesBack = false;

  constructor(storage: Storage, trouble: KeepingTrouble, options: KeeperOptions) {
    this.#storage = storage;
    this.#trouble = trouble;
    this.#options = options;
    this.#scope = options.scope ?? { main: "", apart: false };
    this.#others = options.others ?? noOtherTabs;
    this.#waiting = new Waiting(options.journal);
  }

  /** Everything kept for these files, with what is still on its way; it counts as seen by this page from now on. */
  async load(
    files: readonly string[],
  ): Promise<{ readonly entered: Entered; readonly troubles: readonly string[] }> {
    const loaded = await loadAllEntered(this.#storage, files, this.#scope);
    this.#files = [...new Set([...this.#files, ...files])];
    this.#seen ??= new Map();
    this.saw(new Map(Object.entries(loaded.entered) as [CellId, EnteredValue][]));
    const entered: Record<CellId, EnteredValue> = { ...loaded.entered };
    for (const file of files)
      for (const [id, value] of this.#waiting.entriesAt(placeOf(file, this.#scope))) {
        const own: CellId = `${file}#${nameOfCell(id)}`;
        if (value === undefined) delete entered[own];
        else entered[own] = value;
      }
    return { entered, troubles: loaded.troubles };
  }

  /** What the page now shows of these cells came from elsewhere: typing over it is no accident. */
  saw(values: ReadonlyMap<CellId, EnteredValue | undefined>): void {
    for (const [id, value] of values) this.#seen?.set(placedCell(id, this.#scope), value);
  }

  /** The page now shows this revision of a text: what is written next is made from it. */
  sawText(place: string, revision: number): void {
    this.#shown.set(place, revision);
  }

  /** Writes what pages that ended left in the journal. What can't be written is kept as if typed here. */
  async takeUp(): Promise<void> {
    for (const left of this.#options.journal?.leftBehind() ?? []) {
      const why = "left behind";
      const kept = new Waiting(undefined);
      for (const [place, changes] of byPlace(left.entries))
        if ((await this.#writeEntries(place, changes, why)) !== "written") kept.addEntries(changes);
      for (const [place, text] of left.texts)
        if ((await this.#writeText(place, text, { why, writer: left.page })) !== "written")
          kept.addText(place, text);
      if (kept.empty || this.#waiting.takeOver(kept)) left.done();
      if (!kept.empty) this.#tryLater();
    }
  }

  /** Remembers what a cell's entry holds now; undefined is its default again. */
  keep(id: CellId, value: EnteredValue | undefined): void {
    this.#waiting.addEntries(new Map([[placedCell(id, this.#scope), value]]));
    void this.flush();
  }

  /**
   * Remembers a document's text.
   *
   * @param options.revision the one the page last loaded, or was told of
   * @param options.changed ISO instant
   */
  keepText(
    place: string,
    text: string,
    options: { readonly revision: number; readonly title: string; readonly changed: string },
  ): void {
    const known = [options.revision, this.#shown.get(place) ?? 0, this.#wrote.get(place) ?? 0];
    const revision = Math.max(...known);
    this.#waiting.addText(place, { ...options, text, revision });
    void this.flush();
  }

  /** A text that is still on its way into the storage, as after a full disk. */
  textOnItsWay(place: string): string | undefined {
    return this.#waiting.texts.get(place)?.text;
  }

  /** The promise ends when everything so far is safe, or when it was said that it can't be. */
  flush(): Promise<void> {
    this.#writing ??= this.#writeAll().then((good) => {
      this.#writing = undefined;
      // Something may have come between the last look and now.
      return good && this.#waiting.more ? this.flush() : undefined;
    });
    return this.#writing;
  }

  async #writeAll(): Promise<boolean> {
    while (this.#waiting.more) {
      const { entries, texts } = this.#waiting.next();
      const came: Came[] = [];
      for (const [place, changes] of byPlace(entries)) {
        const each = await this.#writeEntries(place, changes, "two tabs");
        if (each === "written") this.#waiting.wrote(changes);
        came.push(each);
      }
      for (const [place, text] of texts) {
        const writer = this.#options.journal?.page ?? "";
        const each = await this.#writeText(place, text, { why: "two tabs", writer });
        if (each === "written") this.#waiting.wroteText(place, text);
        came.push(each);
      }
      if (came.includes("failed")) {
        this.#waiting.again();
        this.#tryLater();
        return false;
      }
    }
    if (this.#troubled) this.#options.safe?.();
    this.#troubled = false;
    return true;
  }

  #tryLater(): void {
    const { later } = this.#options;
    if (this.#comesBack || later === undefined) return;
    this.#comesBack = true;
    later(() => {
      this.#comesBack = false;
      void this.flush();
    });
  }

  async #writeEntries(place: string, changes: Changes, why: StateReason): Promise<Came> {
    try {
      const { left, held } = await this.#storage.together(async (step) => {
        const { left, before } = await writeEntries(step, place, changes);
        const held = this.#unseen(changes, before, why);
        const when = { at: this.#options.now(), why, open: this.#open };
        if (held.size > 0) await entriesAstray(step, { place, held }, when);
        return { left, held };
      });
      if (left !== undefined) {
        this.#trouble(left);
        return "left";
      }
      for (const [id, value] of changes) this.#seen?.set(id, value);
      const cells = [...changes].map(([id, value]) => [nameOfCell(id), value ?? null] as const);
      this.#others.changed({ what: "entered", place, cells: Object.fromEntries(cells) });
      if (held.size > 0 && why === "two tabs")
        this.#trouble(typedOver([...held.keys()].map(nameOfCell)));
      return "written";
    } catch (error) {
      return this.#failed(error);
    }
  }

  /** What was written over that this page had never seen: typed in another tab. */
  #unseen(changes: Changes, before: Changes, why: StateReason): Changes {
    const seen = this.#seen;
    return new Map(
      [...before].filter(([id, held]) => {
        if (sameValue(held, changes.get(id))) return false;
        if (why === "left behind") return true;
        // Of a document that this page never looked into, nothing can be said.
        const file = fileAt(fileOfCell(id), this.#scope);
        const looked = file !== undefined && this.#files.includes(file);
        return looked && seen !== undefined && !sameValue(held, seen.get(id));
      }),
    );
  }

  async #writeText(
    place: string,
    text: UnsafeText,
    { why, writer }: { readonly why: StateReason; readonly writer: string },
  ): Promise<Came> {
    try {
      const { came, state } = await this.#storage.together(async (step) => {
        // What this page has written since is what this was made from.
        const revision = Math.max(text.revision, this.#wrote.get(place) ?? 0);
        const came = await writeText(step, place, { ...text, revision, writer });
        if (came.is === "written") return { came, state: undefined };
        const astray = { place, text: text.text, state: this.#astray.get(place) };
        const when = { at: this.#options.now(), why, open: this.#open };
        return { came, state: await textAstray(step, astray, when) };
      });
      if (came.is === "written") {
        const { text: stored, title, revision } = came.record;
        if (why !== "left behind") this.#wrote.set(place, revision);
        this.#astray.delete(place);
        this.#others.changed({ what: "text", place, text: stored, title, revision });
        return "written";
      }
      const isNews = !this.#astray.has(place);
      this.#astray.set(place, state);
      if (isNews) this.#trouble(textElsewhere(place, came, { why, isKept: state !== undefined }));
      if (isNews && came.is === "overtaken") this.#options.stands?.(came.stands);
      return state === undefined ? "left" : "written";
    } catch (error) {
      return this.#failed(error);
    }
  }

  get #open() {
    return this.#seen ? { scope: this.#scope, files: this.#files } : undefined;
  }

  #failed(error: unknown): Came {
    this.#troubled = true;
    this.#trouble(notKept(error));
    if (!this.#waiting.held) this.#trouble(journalFull);
    return "failed";
  }
}
