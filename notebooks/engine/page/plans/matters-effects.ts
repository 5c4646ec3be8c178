import {
  type Answer,
  type Effect,
  effectOf,
  type Outcome,
  ranked,
  type Varied,
} from "../../plans/index.ts";
import type { CellId } from "../../types/index.ts";
import type { Context } from "../context.ts";
import type { BarsDrawing } from "./bars.ts";
import { wordsOf } from "./differences-table.ts";
import { keyOf, type MattersState } from "./matters-run.ts";
import { titlesOf } from "./titles.ts";

/** The effects that are known by now, the largest first. */
export function effectsOf(context: Context, { present, varied, tried }: MattersState): Found {
  const now = present && outcomeOf("now", present);
  const found = new Map<CellId, Effect>();
  if (now !== undefined)
    for (const one of varied) {
      const outcomes = outcomesOf(context, one, tried);
      const effect = effectOf(one.id, now, outcomes);
      if (effect) found.set(one.id, effect);
    }
  const all = ranked([...found.values()]);
  return {
    now,
    byEntry: found,
    moving: all.filter(({ size }) => size > 0),
    still: all.filter(({ size }) => size === 0),
  };
}

export interface Found {
  readonly now: Outcome | undefined;
  readonly byEntry: ReadonlyMap<CellId, Effect>;
  /** Those that move the answer, the largest effect first. */
  readonly moving: readonly Effect[];
  readonly still: readonly Effect[];
}

function outcomesOf(
  context: Context,
  { id, trials }: Varied,
  tried: MattersState["tried"],
): readonly Outcome[] {
  return trials.flatMap((trial) => {
    const one = tried.get(keyOf(trial));
    if (one?.is !== "answer") return [];
    return outcomeOf(trial.label ?? wordsOf(context, id, one.text), one.answer) ?? [];
  });
}

function outcomeOf(text: string, answer: Answer): Outcome | undefined {
  if (answer.is !== "figure" || answer.measure === undefined) return undefined;
  const { figure, measure, cutShort = false } = answer;
  return { text, figure, measure, ...(cutShort ? { cutShort } : {}) };
}

/** So many bars are drawn; the table has them all. */
const mostBars = 15;

/** From the low to the high of each entry around the present answer, in order of size. */
export function effectBars(
  context: Context,
  title: string,
  { now, moving }: Found,
): BarsDrawing | undefined {
  if (now === undefined || moving.length === 0) return undefined;
  const titleOf = titlesOf(context.book);
  const drawn = moving.slice(0, mostBars);
  const said = drawn
    .slice(0, 5)
    .map(
      ({ id, low, high }) =>
        `${titleOf(id)} from ${low.figure.text} (${low.text}) to ${high.figure.text} (${high.text})`,
    );
  const rest = moving.length - drawn.length;
  return {
    bars: drawn.map(({ id, low, high }) => ({
      label: titleOf(id),
      from: low.measure.likely,
      to: high.measure.likely,
      fromWords: low.text === "now" ? "" : low.text,
      toWords: high.text === "now" ? "" : high.text,
    })),
    line: { at: now.measure.likely, words: `now ${now.figure.text}` },
    alternative: `What moves ${title} most, the largest first: ${said.join("; ")}. The table below has all.`,
    caption: `${title}, with each entry from its low to its high and the others as they are. The words at the ends are what stands in the entry.${rest > 0 ? ` ${rest} more are in the table.` : ""}`,
  };
}
