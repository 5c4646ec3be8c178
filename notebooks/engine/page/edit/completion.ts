import {
  autocompletion,
  type Completion,
  type CompletionContext,
  type CompletionResult,
  insertCompletionText,
} from "@codemirror/autocomplete";
import type { Extension } from "@codemirror/state";
import { el } from "../dom.ts";
import { figureNodes } from "../figure-text.ts";
import { ownNames, type Suggestion, suggestions, type Vocabulary } from "./suggestions.ts";
import { type WritingPlace, writingPlace } from "./writing-place.ts";

interface Offered extends Completion {
  readonly line?: string;
  readonly value?: string;
}

/** Offers what may be written at the caret: a plain list, worked by the arrow keys, Enter and Escape. */
export function completion(vocabulary: () => Vocabulary): Extension {
  return listOf((context) => offered(context, vocabulary()));
}

/** Offers the names of cells where prose puts a figure into a sentence. */
export function figureCompletion(vocabulary: () => Vocabulary): Extension {
  return listOf((context) => {
    const before = context.matchBefore(/`fig\s+[\p{L}\p{N}_$]*/u);
    if (!before) return null;
    const [word = ""] = /[\p{L}\p{N}_$]*$/u.exec(before.text) ?? [];
    const { cells } = vocabulary();
    const list = suggestions({ kind: "name", from: context.pos }, { cells, handed: [] });
    return { from: context.pos - word.length, options: list.map(optionOf), validFor: wordsOnly };
  });
}

const wordsOnly = /^[\p{L}_$][\p{L}\p{N}_$]*$/u;

function listOf(source: (context: CompletionContext) => CompletionResult | null): Extension {
  return autocompletion({
    override: [source],
    icons: false,
    // So few that the list need not scroll: going on with the arrow keys brings the next.
    maxRenderedOptions: 7,
    addToOptions: [
      {
        position: 80,
        render({ value }: Offered) {
          return value ? el("span", { class: "cm-completionDetail" }, ...figureNodes(value)) : null;
        },
      },
      {
        position: 90,
        render: ({ line }: Offered) => (line ? el("span", { class: "bw-help" }, line) : null),
      },
    ],
  });
}

function offered(context: CompletionContext, vocabulary: Vocabulary): CompletionResult | null {
  const text = context.state.doc.toString();
  const place = writingPlace(text, context.pos);
  if (place.kind === "none" || !isAsked(place, context)) return null;
  const list = suggestions(place, vocabulary, place.kind === "name" ? ownNames(text) : []);
  if (list.length === 0) return null;
  return {
    from: place.from,
    options: list.map(optionOf),
    validFor: wordsOnly,
  };
}

/** Names are offered once one is begun; fields and options as soon as one may stand there. */
function isAsked(
  place: Exclude<WritingPlace, { kind: "none" }>,
  context: CompletionContext,
): boolean {
  return context.explicit || place.kind !== "name" || place.from < context.pos;
}

function optionOf({ name, detail, help, order, text }: Suggestion): Offered {
  return {
    label: name,
    boost: -order,
    ...(detail === undefined ? {} : { value: detail }),
    ...(help === undefined ? {} : { line: help }),
    ...(text === undefined
      ? {}
      : {
          apply: (view, _option, from, to) =>
            view.dispatch(insertCompletionText(view.state, text, from, to)),
        }),
  };
}
