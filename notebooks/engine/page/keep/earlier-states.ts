import type { ListedState, StateRecord } from "../../store/index.ts";
import { listStates, readState } from "../../store/seldom.ts";
import type { CellId, TableText } from "../../types/index.ts";
import { partsOf } from "../book.ts";
import { button, el, freshId } from "../dom.ts";
import { openPane } from "../pane.ts";
import { changeWords } from "./change-words.ts";
import { differences } from "./differences.ts";
import { differencesView } from "./differences-view.ts";
import type { ContentNow, KeepContext, KeptParts } from "./kept.ts";
import { reasonWords } from "./reason-words.ts";
import { toBringBack } from "./to-bring-back.ts";
import { whenInWords } from "./when.ts";

/** Opens the list of a notebook's earlier states, the newest first; any can be looked at and brought back. */
export async function openEarlierStates(context: KeepContext, parts: KeptParts): Promise<void> {
  const { book, options } = context;
  const main = book.main.file;
  const { states, trouble } = await listStates(options.storage, main);
  const read = await Promise.all(
    states.map(({ number }) => readState(options.storage, main, number)),
  );
  const now = parts.contentNow();
  const titleOf = (id: CellId) => book.title(id);
  const list = el("ol", { class: "states" });
  const pane = openPane({
    title: "Earlier states",
    className: "earlier",
    content: [
      el("p", {}, intro(states.length)),
      ...(trouble === undefined ? [] : [el("p", { class: "broken" }, trouble)]),
      list,
    ],
  });
  states.forEach((listed, index) => {
    const state = read[index];
    list.append(
      state === undefined
        ? goneLine(listed)
        : stateLine(state, newerOf(read.slice(0, index)) ?? now, {
            now,
            titleOf,
            given: (id) => book.defaultTable(id),
            bringBack: () => {
              pane.close();
              bringBack(state, context, parts);
            },
          }),
    );
  });
}

function intro(count: number): string {
  const kept = "One is kept before the first change after a pause, the last 50 of them.";
  return count === 0
    ? `There is none yet. ${kept}`
    : `${kept} Bringing one back can be undone like any change.`;
}

/** The state that came after, of those that follow each other. */
function newerOf(newer: readonly (StateRecord | undefined)[]): StateRecord | undefined {
  return newer.toReversed().find((state) => state !== undefined && !isBeside(state));
}

/** Not one the notebook was in on the way to now. */
function isBeside({ why }: StateRecord): boolean {
  return why === "two tabs" || why === "from a file" || why === "left behind";
}

interface LineParts {
  readonly now: ContentNow;
  titleOf(id: CellId): string;
  given(id: CellId): TableText;
  bringBack(): void;
}

function stateLine(
  state: StateRecord,
  next: ContentNow,
  { now, titleOf, given, bringBack }: LineParts,
): HTMLElement {
  const time = whenInWords(state.at, new Date());
  const beside = isBeside(state);
  const since = changeWords(differences(state, beside ? now : next), titleOf);
  const inside = el("div", { id: freshId("state"), hidden: true });
  const look = button("Look at it", () => toggle(), {
    "aria-expanded": "false",
    "aria-controls": inside.id,
  });
  look.append(el("span", { class: "vh" }, ` as it was ${time}`));
  const toggle = () => {
    inside.hidden = !inside.hidden;
    look.setAttribute("aria-expanded", String(!inside.hidden));
    if (!inside.hidden && inside.childElementCount === 0)
      inside.append(...insideOf(state, { now, titleOf, given, bringBack }));
  };
  const words = `${beside ? "Differs from now" : "Changed after it"}: ${since}`;
  return el(
    "li",
    {},
    el(
      "div",
      { class: "stateline" },
      el("b", {}, time),
      el("span", {}, words, el("small", {}, reasonWords(state))),
      look,
    ),
    inside,
  );
}

function insideOf(
  state: StateRecord,
  { now, titleOf, given, bringBack }: LineParts,
): readonly HTMLElement[] {
  const all = differences(state, now);
  const { stays, texts, entered } = toBringBack(state, now);
  if (all.length === 0)
    return [el("p", { class: "same" }, "It is just as the notebook is now."), ...stayLines(stays)];
  const nothing = texts.size + entered.size === 0;
  return [
    differencesView(all, { titleOf, given, isOwn: (id) => partsOf(id)[0] === now.main }),
    ...stayLines(stays),
    ...(nothing
      ? []
      : [el("p", { class: "acts" }, button("Bring this back", bringBack, { class: "main" }))]),
  ];
}

const stayLines = (stays: readonly string[]) =>
  stays.map((words) => el("p", { class: "stays" }, words));

function goneLine({ at }: ListedState): HTMLElement {
  const words = "This state can’t be read by this version of the workbook.";
  return el(
    "li",
    {},
    el(
      "div",
      { class: "stateline" },
      el("b", {}, whenInWords(at, new Date())),
      el("span", {}, words),
    ),
  );
}

function bringBack(state: StateRecord, { say }: KeepContext, parts: KeptParts): void {
  const { texts, entered } = toBringBack(state, parts.contentNow());
  parts.change({ texts, entered }, "bringing back");
  say(
    `It is as it was ${whenInWords(state.at, new Date())}. Undo last change brings back what was there before.`,
  );
}
