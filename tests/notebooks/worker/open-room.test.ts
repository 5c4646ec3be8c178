import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { documentsOf } from "../../../notebooks/engine/document/index.ts";
import type {
  CellId,
  CellState,
  Entered,
  FromRoom,
  Host,
  OutlineCell,
} from "../../../notebooks/engine/types/index.ts";
import { openRoom } from "../../../notebooks/engine/worker/open-room.ts";
import { cell, fakeHost, table } from "../run/fake-host.ts";

type Texts = Readonly<Record<string, string>>;

/** What a page knows that only listens: the outline, and of each of its cells the last state told. */
class Listener {
  readonly messages: FromRoom[] = [];
  readonly room: ReturnType<typeof openRoom>;
  outline: readonly OutlineCell[] = [];
  readonly states = new Map<CellId, CellState>();
  problems: unknown;
  #turn = 0;
  #waiting: { readonly turn: number; readonly resolve: () => void } | undefined;

  constructor(host: Host = fakeHost()) {
    this.room = openRoom(host, (message) => this.#take(message));
  }

  #take(message: FromRoom): void {
    this.messages.push(message);
    if (message.kind === "outline") {
      this.outline = message.cells;
      this.problems = message.problems;
      const there = new Set(message.cells.map(({ id }) => id));
      for (const id of this.states.keys()) if (!there.has(id)) this.states.delete(id);
    }
    if (message.kind === "values")
      for (const state of message.cells) this.states.set(state.id, state);
    if (message.kind === "settled" && message.turn === this.#waiting?.turn) {
      this.#waiting.resolve();
      this.#waiting = undefined;
    }
  }

  #settled(turn: number, act: () => void): Promise<void> {
    return new Promise((resolve) => {
      this.#waiting = { turn, resolve };
      act();
    });
  }

  open(texts: Texts, entered: Entered = {}, stopped: readonly CellId[] = []): Promise<void> {
    const documents = Object.fromEntries(documentsOf(texts));
    const surroundings = { units: "us", today: "2026-04-25" } as const;
    return this.#settled(0, () =>
      this.room.receive({
        ...{ kind: "open", session: 1, main: "a.md", documents, entered, surroundings, stopped },
      }),
    );
  }

  /** Edits, without waiting for what comes of it. */
  type(texts: Texts, entered: Entered = {}): number {
    this.#turn += 1;
    const documents = Object.fromEntries(documentsOf(texts));
    this.room.receive({ kind: "edit", session: 1, turn: this.#turn, documents, entered });
    return this.#turn;
  }

  edit(texts: Texts, entered: Entered = {}): Promise<void> {
    return this.#settled(this.#turn + 1, () => this.type(texts, entered));
  }

  get known() {
    const { outline, problems } = this;
    return { outline, problems, states: outline.map(({ id }) => this.states.get(id)) };
  }
}

describe("a room whose notebook is edited", () => {
  it("tells the new outline before anything of the turn", async () => {
    const page = new Listener();
    await page.open({ "a.md": cell("one", "1") + cell("two", "2") });
    for (const text of [cell("one", "1"), `Words.\n\n${cell("one", "1")}`, cell("one", "3")]) {
      page.messages.length = 0;
      await page.edit({ "a.md": text });
      expect(page.messages[0]?.kind).toBe("outline");
      expect(page.messages.filter(({ kind }) => kind === "outline")).toHaveLength(1);
      expect(page.messages.at(-1)?.kind).toBe("settled");
    }
  });

  it("tells what is wrong with a document anew, and that it is no more", async () => {
    const page = new Listener();
    await page.open({ "a.md": cell("one", "1") });
    expect(page.problems).toEqual([]);
    await page.edit({ "a.md": `${cell("one", "1")}\`fig nothing\`\n` });
    expect(page.problems).toMatchObject([{ code: "not-defined", names: ["nothing"], line: 5 }]);
    await page.edit({ "a.md": cell("one", "1") });
    expect(page.problems).toEqual([]);
  });

  it("starts a stopped cell only once its formula is another", async () => {
    const page = new Listener();
    const endless = cell("endless", "1 + 1");
    const rests = cell("rests", "endless + 1");
    await page.open({ "a.md": endless + rests }, {}, ["a.md#endless"]);
    expect(page.states.get("a.md#endless")?.error?.kind).toBe("stopped");
    expect(page.states.get("a.md#rests")?.error?.kind).toBe("waits");
    await page.edit({ "a.md": `Moved.\n\n${endless}${rests}` });
    expect(page.states.get("a.md#endless")?.error).toMatchObject({ kind: "stopped", line: 4 });
    await page.edit({ "a.md": cell("endless", "2 + 2") + rests });
    expect(page.states.get("a.md#rests")?.shown).toMatchObject({ figure: { number: "5" } });
    await page.edit({ "a.md": endless + rests });
    expect(page.states.get("a.md#rests")?.shown).toMatchObject({ figure: { number: "3" } });
  });

  it("starts a stopped cell that was not there at first once it was edited", async () => {
    const page = new Listener();
    await page.open({ "a.md": cell("one", "1") }, {}, ["a.md#endless"]);
    await page.edit({ "a.md": cell("endless", "1 + 1") });
    expect(page.states.get("a.md#endless")?.error?.kind).toBe("stopped");
    await page.edit({ "a.md": cell("endless", "1 + 2") });
    expect(page.states.get("a.md#endless")?.error).toBeUndefined();
  });

  it("hears nothing of an edit meant for a notebook opened before", async () => {
    const page = new Listener();
    await page.open({ "a.md": cell("one", "1") });
    page.messages.length = 0;
    page.room.receive({ kind: "edit", session: 0, turn: 7, documents: {}, entered: {} });
    expect(page.messages).toEqual([]);
  });
});

const names = ["a", "b", "c", "d", "span"] as const;
const name = fc.constantFrom(...names);
const formula = fc.oneof(
  { weight: 4, arbitrary: fc.tuple(name, name).map(([one, other]) => `${one} + ${other}`) },
  { weight: 3, arbitrary: fc.nat(9).map(String) },
  { weight: 2, arbitrary: fc.nat(9).map((n) => `wholeEntry("${n}")`) },
  { weight: 2, arbitrary: name.map((one) => `await ${one}`) },
  { weight: 1, arbitrary: name.map((one) => `\n\nfail("no" + ${one})`) },
  { weight: 1, arbitrary: fc.constantFrom("1 +", "unknown", "", "span(2)", "units", "yield 1") },
  { weight: 2, arbitrary: name.map((one) => `readSizes(${one}).rows.length`) },
);
const block = fc.oneof(
  { weight: 8, arbitrary: fc.tuple(name, formula).map(([one, text]) => cell(one, text)) },
  { weight: 2, arbitrary: name.map((one) => table(one, "size\n1\nx\n3")) },
  { weight: 1, arbitrary: fc.constant("Words with `fig a`.\n\n") },
  { weight: 1, arbitrary: fc.constant("```uses b.md\nc\nd\n```\n\n") },
);
type Sheets = readonly [string[], string[]];
const sheets = fc.tuple(
  fc.array(block, { minLength: 2, maxLength: 7 }),
  fc.array(block, { maxLength: 4 }),
);

/** One edit as people make them: a block put in, taken out, changed, moved. */
const step = fc.record({
  act: fc.constantFrom("put in", "take out", "change", "change", "change", "move"),
  inSecond: fc.boolean().map((yes) => (yes ? 1 : 0)),
  at: fc.nat(7),
  block,
  /** Whether the next edit waits for what comes of this one. */
  waits: fc.boolean(),
  entered: fc.dictionary(
    fc.tuple(fc.constantFrom("a.md", "b.md"), name).map(([file, one]): CellId => `${file}#${one}`),
    fc.constantFrom("1", "2", "bad"),
    { maxKeys: 2 },
  ),
});

type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

function edited(before: Sheets, { act, inSecond, at, block: fresh }: Step): Sheets {
  const blocks = before[inSecond] ?? [];
  const where = at % (blocks.length + 1);
  const out = act === "put in" ? 0 : 1;
  const moved = blocks[where] ?? "";
  const rest = blocks.toSpliced(
    where,
    out,
    ...(act === "put in" || act === "change" ? [fresh] : []),
  );
  const after = act === "move" ? [moved, ...rest] : rest;
  return inSecond === 1 ? [before[0], after] : [after, before[1]];
}

const textsOf = ([first, second]: Sheets): Texts => ({
  "a.md": first.join(""),
  "b.md": second.join(""),
});

describe("after any edits", () => {
  it("a page that listened to them all knows what one does that opened the documents now", async () => {
    await fc.assert(
      fc.asyncProperty(
        sheets,
        fc.array(step, { minLength: 1, maxLength: 8 }),
        async (first, steps) => {
          const page = new Listener();
          let now: Sheets = first;
          await page.open(textsOf(now));
          for (const [index, each] of steps.entries()) {
            now = edited(now, each);
            const texts = textsOf(now);
            if (!each.waits && index < steps.length - 1) {
              page.type(texts, each.entered);
              continue;
            }
            await page.edit(texts, each.entered);
            const anew = new Listener();
            await anew.open(texts, each.entered);
            expect(page.known).toEqual(anew.known);
          }
        },
      ),
      { numRuns: 200 },
    );
  });
});
