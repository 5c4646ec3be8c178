import type { Page } from "playwright-core";

/** A notebook with one field for words, that takes no time to open. */
export const diary = `# Diary

\`\`\`js cell line "What was done"
({ entry: "text", initial: "", read: (text) => ({ ok: true, value: text }) })
\`\`\`

\`\`\`js cell other "Anything else"
({ entry: "text", initial: "", read: (text) => ({ ok: true, value: text }) })
\`\`\`

\`\`\`js cell letters pinned "Letters"
line.length + other.length
\`\`\`
`;

/** What is kept in the page's browser under a key. */
export function keptUnder(page: Page, key: string): Promise<unknown> {
  return page.evaluate(
    (wanted) =>
      new Promise<unknown>((done, failed) => {
        const opening = indexedDB.open("bedwright");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction("kept").objectStore("kept").get(wanted);
          reading.onerror = () => failed(reading.error);
          reading.onsuccess = () => {
            opening.result.close();
            done(reading.result);
          };
        };
      }),
    key,
  );
}

/** Puts something into what is kept, as another version of the workbook would. */
export function putKept(page: Page, key: string, record: unknown): Promise<void> {
  return page.evaluate(
    ([at, value]) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open("bedwright");
        opening.onerror = () => failed(opening.error);
        opening.onsuccess = () => {
          const step = opening.result.transaction("kept", "readwrite");
          step.objectStore("kept").put(value, at as string);
          step.onerror = () => failed(step.error);
          step.oncomplete = () => {
            opening.result.close();
            done();
          };
        };
      }),
    [key, record] as const,
  );
}

/** Types letters until it is told to stop, and knows what stood there when. */
export class Typist {
  #typed: { readonly text: string; readonly at: number }[] = [];
  #stopped = false;
  #text: string;
  readonly #page: Page;
  readonly #letters: string;

  constructor(page: Page, letters: string, before = "") {
    this.#page = page;
    this.#letters = letters;
    this.#text = before;
  }

  /** Ends when it was stopped, or the page is gone. */
  async type(): Promise<void> {
    try {
      for (let count = 0; !this.#stopped; count += 1) {
        const letter = this.#letters.charAt(count % this.#letters.length);
        await this.#page.keyboard.type(letter);
        this.#text += letter;
        this.#typed.push({ text: this.#text, at: performance.now() });
        await new Promise((done) => setTimeout(done, 15));
      }
    } catch (error) {
      if (!this.#stopped) throw error;
    }
  }

  stop(): void {
    this.#stopped = true;
  }

  /** All that was typed, and the letter that was under way. */
  get whole(): string {
    return this.#text + this.#letters.charAt(this.#typed.length % this.#letters.length);
  }

  /** Ends when some letters stand there. */
  async begun(): Promise<void> {
    while (this.#typed.length < 3) await new Promise((done) => setTimeout(done, 5));
  }

  /** What stood there at a time. */
  at(time: number): string {
    return this.#typed.findLast(({ at }) => at <= time)?.text ?? "";
  }
}

/** Ends a page as nothing on it can notice: it is closed, or its process falls over. */
export async function killPage(page: Page, how: "closed" | "crashed"): Promise<void> {
  if (how === "crashed") {
    const session = await page.context().newCDPSession(page);
    const crashed = page.waitForEvent("crash");
    session.send("Page.crash").catch(() => undefined);
    await crashed;
  }
  await page.close({ runBeforeUnload: false });
}

/** Types for a while over a second, kills the page and gives what must and what may be there after. */
export async function typeAndKill(
  page: Page,
  kill: () => Promise<void>,
  letters: string,
): Promise<{ readonly least: string; readonly most: string }> {
  const typist = new Typist(page, letters);
  const typing = typist.type();
  await typist.begun();
  await new Promise((done) => setTimeout(done, 1_000 + Math.random() * 500));
  const killedAt = performance.now();
  typist.stop();
  await kill();
  await typing;
  const least = typist.at(killedAt - 1_000);
  if (least === "") throw new Error("nothing was typed in time");
  return { least, most: typist.whole };
}
