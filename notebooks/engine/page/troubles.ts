import { el } from "./dom.ts";

export interface DocumentTrouble {
  readonly file: string;
  readonly line: number;
  readonly message: string;
}

/** What the reader must know of the whole notebook: what is not kept, what its documents have wrong. */
export function troublesView(
  said: readonly string[],
  problems: readonly DocumentTrouble[],
): readonly HTMLElement[] {
  const lines = [
    ...said.map((words) => el("p", {}, words)),
    ...problems.map(({ file, line, message }) =>
      el("p", {}, el("b", {}, `${file}, line ${line}: `), message),
    ),
  ];
  return lines.length > 0 ? [el("div", { class: "broken troubles" }, ...lines)] : [];
}
