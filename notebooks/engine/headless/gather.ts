import { documentsNeeded, readNotebook } from "../document/index.ts";
import { type Unpacked, unpack } from "../document/seldom.ts";
import type { CellId, DocumentProblem } from "../types/index.ts";
import type { Located } from "./locate.ts";

/** The texts a run needs, taken out of the files they were saved in. */
export interface Gathered {
  readonly documents: Readonly<Record<string, string>>;
  readonly entered: Readonly<Record<CellId, string>>;
  readonly troubles: readonly DocumentProblem[];
}

/**
 * Reads a notebook and all it uses. What it carries counts before what lies beside it; what a used
 * notebook carries, only where there is nothing else of that name.
 */
export async function gather({ main, read }: Located): Promise<Gathered> {
  const texts = new Map<string, string>();
  const entered: Record<CellId, string> = {};
  const troubles: DocumentProblem[] = [];
  const carriedByOthers = new Map<string, Unpacked>();
  let own: Unpacked | undefined;
  const textOf = async (file: string): Promise<string | undefined> => {
    const carried = own?.carried.get(file);
    if (carried !== undefined) return carried;
    const text = await read(file);
    if (text === undefined) return fromOthers(file);
    const saved = unpack(text, file);
    troubles.push(...saved.problems);
    if (own === undefined) {
      own = saved;
      Object.assign(entered, saved.entered);
    } else {
      takeOver(saved, file);
      for (const other of saved.carried.keys())
        if (!carriedByOthers.has(other)) carriedByOthers.set(other, saved);
    }
    return saved.text;
  };
  const fromOthers = (file: string): string | undefined => {
    const by = carriedByOthers.get(file);
    if (by !== undefined) takeOver(by, file);
    return by?.carried.get(file);
  };
  const takeOver = (saved: Unpacked, file: string): void => {
    for (const [id, text] of Object.entries(saved.entered) as [CellId, string][])
      if (id.startsWith(`${file}#`)) entered[id] ??= text;
  };
  const waiting = [main];
  for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
    if (texts.has(file)) continue;
    const text = await textOf(file);
    if (text === undefined) continue;
    texts.set(file, text);
    waiting.push(...documentsNeeded(readNotebook(text, file)));
  }
  return { documents: Object.fromEntries(texts), entered, troubles };
}
