import { exportAll, importAll } from "../../store/seldom.ts";
import { button, el } from "../dom.ts";
import { openPane } from "../pane.ts";
import { saveText } from "../save-text.ts";
import type { KeepContext } from "./kept.ts";

/** A file larger than this (in bytes) is none that keeping everything made. */
const largest = 200_000_000;

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
  const file = await chosenFile();
  if (file === undefined) return;
  if (file.size > largest) {
    report("It was not taken in", [
      `${file.name} is too large (${Math.round(file.size / 1e6)} MB; at most 200 MB can be taken in).`,
    ]);
    return;
  }
  const came = await importAll(options.storage, await file.text(), {
    at: new Date().toISOString(),
    taken: options.notebooks.map((notebook) => notebook.file),
  });
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

function chosenFile(): Promise<File | undefined> {
  return new Promise((resolve) => {
    const input = el("input", { type: "file", accept: ".json,application/json", hidden: true });
    const end = () => {
      resolve(input.files?.[0]);
      input.remove();
    };
    input.addEventListener("cancel", end);
    input.addEventListener("change", end);
    document.body.append(input);
    input.click();
  });
}
