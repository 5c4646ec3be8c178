import { exportAll, importAll } from "../../store/seldom.ts";
import { button, el } from "../dom.ts";
import { now } from "../now.ts";
import { openPane } from "../pane.ts";
import { pickFile, readTextFile } from "../pick-file.ts";
import { saveText } from "../save-text.ts";
import type { KeepContext } from "./kept.ts";

/** A file larger than this, in MB, is none that keeping everything made. */
const largest = 200;

/** Gives the reader everything that is kept as one file. */
export async function keepEverything(
  { storage, today }: KeepContext["options"],
  say: (words: string) => void,
): Promise<void> {
  const text = await exportAll(storage);
  const name = `bedwright-everything-${today}.json`;
  saveText(text, name, "application/json");
  say(`Everything kept here is in ${name}.`);
}

/** Asks for such a file, takes it in and reports what happened. */
export async function takeEverything(
  options: KeepContext["options"],
  say: (words: string) => void,
): Promise<void> {
  const file = await pickFile(".json,application/json");
  if (file === undefined) return;
  const read = await readTextFile(file, largest);
  const came = read.ok
    ? await importAll(options.storage, read.text, {
        at: now(),
        taken: options.notebooks.map((notebook) => notebook.file),
      })
    : ({ good: false, words: read.words } as const);
  if (came.good) report(`From ${file.name}`, came.value);
  else report("It was not taken in", [came.words]);
  say(came.good ? "The file was taken in." : came.words);
}

function report(title: string, lines: readonly string[]): void {
  openPane({
    title,
    className: "keepreport",
    content: [
      el("ul", {}, ...lines.map((line) => el("li", {}, line))),
      el(
        "p",
        { class: "acts" },
        button("Load the page again to see it", () => location.reload()),
      ),
    ],
  });
}
