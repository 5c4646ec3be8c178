import { documentKey, takenBy } from "./documents.ts";
import { freshFile, safeFile } from "./file-names.ts";
import { readKey } from "./keys.ts";
import { movedRecord } from "./move.ts";
import { good, type Outcome, refused } from "./outcome.ts";
import { readRecord } from "./records.ts";
import type { Storage } from "./storage.ts";
import { notKept } from "./words.ts";

/**
 * Gives one of the reader's own notebooks another file name, with all that is kept of it: what it
 * carries, entries, plans, earlier states. Where the name is taken it gets a number. Gives the name
 * it has now. Other notebooks that use it are left as they are.
 */
export async function renameDocument(
  storage: Storage,
  file: string,
  { to, taken = [] }: { readonly to: string; readonly taken?: Iterable<string> },
): Promise<Outcome<string>> {
  try {
    return await storage.together(async (step): Promise<Outcome<string>> => {
      const there = readRecord("document", await step.get(documentKey(file)));
      if (there.is !== "record") return refused(`There is no notebook ${file} of your own.`);
      const wanted = safeFile(to);
      if (wanted === file) return good(file);
      const keys = await step.keys();
      const others = keys.filter((key) => readKey(key)?.main !== file);
      const name = freshFile(wanted, [...taken, ...takenBy(others)]);
      const moves: { key: string; moved: ReturnType<typeof movedRecord> }[] = [];
      for (const key of keys)
        if (readKey(key)?.main === file)
          moves.push({
            key,
            moved: movedRecord(key, await step.get(key), { from: file, to: name }),
          });
      const stuck = moves.find(({ moved }) => moved === undefined);
      if (stuck)
        return refused(
          `${file} keeps its name: something kept of it (${stuck.key}) can't be read by this version of the workbook and must stay where it is.`,
        );
      for (const { key } of moves) await step.remove(key);
      for (const { moved } of moves) if (moved) await step.put(...moved);
      return good(name);
    });
  } catch (error) {
    return refused(notKept(error));
  }
}
