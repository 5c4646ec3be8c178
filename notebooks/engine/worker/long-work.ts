import type { LongWork } from "../types/index.ts";
import { left } from "./before.ts";
import { plainData } from "./plain-data.ts";
import type { WorkerScope } from "./scope.ts";
import type { Ask, WorkAnswer } from "./work-message.ts";

type ToLongWork =
  | { readonly kind: "solver"; readonly solver: ArrayBuffer }
  | { readonly kind: "work"; readonly work: Ask };

/** Makes the listed functions once the solver's bytes are there. */
export type MakeLongWork = (solver: ArrayBuffer) => Readonly<Record<string, LongWork>>;

/**
 * The script of the worker for long work. It holds the library and the solver and no cell's code:
 * it takes the name of a listed function with plain data and gives plain data back.
 *
 * @param problemsOf the problems an error carries, where it is one of the library's
 */
export function startLongWork(
  make: MakeLongWork,
  problemsOf: (error: unknown) => unknown,
  scope: WorkerScope = globalThis as unknown as WorkerScope,
): void {
  if (left.length > 0) throw new Error(`This browser does not let go of: ${left.join(", ")}.`);
  const tell = (message: WorkAnswer) => scope.postMessage(message);
  let listed: Readonly<Record<string, LongWork>> = {};

  async function workOut({ id, name, data }: Ask): Promise<void> {
    const work = Object.hasOwn(listed, name) ? listed[name] : undefined;
    if (!work)
      return tell({ step: "failed", id, message: `“${name}” is not on the list of long work` });
    try {
      const value = await work(Array.isArray(data) ? data : [data], {
        // A cancelled request ends this whole worker, so nobody ever calls.
        signal: { aborted: false, addEventListener: () => undefined },
        progress: (words, fraction) =>
          tell({ step: "progress", id, words, ...(fraction === undefined ? {} : { fraction }) }),
      });
      tell({ step: "done", id, value: plainData(value) });
    } catch (error) {
      const problems = problemsOf(error);
      const message = error instanceof Error ? error.message : String(error);
      tell({ step: "failed", id, message, ...(problems === undefined ? {} : { problems }) });
    }
  }

  scope.onmessage = ({ data }) => {
    const message = data as ToLongWork;
    if (message.kind === "solver") listed = make(message.solver);
    else void workOut(message.work);
  };
}
