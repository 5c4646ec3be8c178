import { ProblemError, readChoice, readYesNo, requireRecord } from "../../lib/index.ts";
import type { Entry } from "../engine/types/index.ts";
import { type EntryOptions, madeEntry, requireOptions, requireTexts } from "./options.ts";

/** What may be chosen: words, or words with what the reader sees in their place. */
export interface ChoiceEntryOptions<T extends string> extends EntryOptions {
  readonly choices: readonly T[] | Readonly<Record<T, string>>;
}

/**
 * An entry for one of a few words:
 * `choiceEntry("sides", { choices: { sides: "Sides run through", ends: "Ends run through" } })`.
 *
 * @throws ProblemError where the default is none of the choices, or an option is misspelt
 *
 * @example
 * choiceEntry("sides", { choices: ["sides", "ends"] }).read("ends").value // => "ends"
 */
export function choiceEntry<const T extends string>(
  initial: NoInfer<T>,
  options: ChoiceEntryOptions<T>,
): Entry<T> {
  requireOptions(options, ["choices"]);
  const choices = choicesOf(options);
  if (choices.length === 0) {
    throw new ProblemError([
      {
        code: "missing",
        path: ["options", "choices"],
        allowed: "at least one word",
        received: "",
        remedy: "List what may be chosen.",
      },
    ]);
  }
  return madeEntry<T, EntryOptions>(
    {
      entry: "choice",
      initial,
      options: Object.freeze(choices),
      read: (text) => readChoice(text, { path: [], choices: choices.map((choice) => choice.text) }),
    },
    options,
  );
}

function choicesOf<T extends string>({ choices }: ChoiceEntryOptions<T>) {
  if (isList(choices)) {
    requireTexts(choices, ["options", "choices"]);
    return choices.map((text) => ({ text, label: text }));
  }
  requireRecord(choices, ["options", "choices"]);
  requireTexts(Object.values(choices), ["options", "choices"]);
  return Object.entries<string>(choices).map(([text, label]) => ({ text: text as T, label }));
}

function isList<T extends string>(
  choices: readonly T[] | Readonly<Record<T, string>>,
): choices is readonly T[] {
  return Array.isArray(choices);
}

/**
 * An entry for yes or no: `yesNoEntry("yes")`.
 *
 * @throws ProblemError where the default is neither, or an option is misspelt
 *
 * @example
 * yesNoEntry("yes").read("no").value // => false
 */
export function yesNoEntry(initial: "yes" | "no", options: EntryOptions = {}): Entry<boolean> {
  requireOptions(options, []);
  return madeEntry<boolean, EntryOptions>(
    { entry: "yes-no", initial, read: (text) => readYesNo(text, { path: [] }) },
    options,
  );
}
