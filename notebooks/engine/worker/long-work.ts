import type { LongWork, LongWorkControl } from "../types/index.ts";
import { left } from "./before.ts";
import { plainData } from "./plain-data.ts";
import type { WorkerScope } from "./scope.ts";
import { Sluice } from "./sluice.ts";
import { turnGiver } from "./turn.ts";
import type { Ask, ToLongWork, WorkAnswer } from "./work-message.ts";

/** Makes the listed functions; the solver's bytes come when they are there. */
export type MakeLongWork = (solver: Promise<ArrayBuffer>) => Readonly<Record<string, LongWork>>;

/** The least time between two words of progress, and between two better results (milliseconds). */
const least = { progress: 50, improved: 100 };

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
  const turn = turnGiver();
  const running = new Map<number, Errand>();
  let solverCame: (solver: ArrayBuffer) => void = () => undefined;
  const solver = new Promise<ArrayBuffer>((resolve) => {
    solverCame = resolve;
  });
  const listed = make(solver);

  async function workOut({ id, name, data }: Ask): Promise<void> {
    const work = Object.hasOwn(listed, name) ? listed[name] : undefined;
    if (!work)
      return tell({ step: "failed", id, message: `“${name}” is not on the list of long work` });
    const errand = new Errand(id, tell, turn);
    running.set(id, errand);
    try {
      const value = await work(Array.isArray(data) ? data : [data], errand.control);
      if (errand.control.signal.aborted) tell({ step: "failed", id, message: "cancelled" });
      else tell({ step: "done", id, value: plainData(value) });
    } catch (error) {
      const problems = problemsOf(error);
      const message = error instanceof Error ? error.message : String(error);
      tell({ step: "failed", id, message, ...(problems === undefined ? {} : { problems }) });
    } finally {
      errand.end();
      running.delete(id);
    }
  }

  scope.onmessage = ({ data }) => {
    const message = data as ToLongWork;
    if (message.kind === "solver") solverCame(message.solver);
    else if (message.kind === "cancel") running.get(message.id)?.cancel();
    else void workOut(message.work);
  };
}

/** One request under way: what its work is handed to tell how far it is, and to hear its end. */
class Errand {
  readonly control: LongWorkControl;
  #state: "under way" | "cancelled" | "over" = "under way";
  readonly #cancelled: (() => void)[] = [];

  constructor(id: number, tell: (message: WorkAnswer) => void, turn: () => Promise<void>) {
    const now = () => performance.now();
    const goesOn = () => this.#state === "under way";
    const progress = new Sluice(tell, { least: least.progress, now });
    const improved = new Sluice<unknown>(
      (value) => tell({ step: "improved", id, value: plainData(value) }),
      { least: least.improved, now },
    );
    const isCancelled = () => this.#state === "cancelled";
    this.control = {
      signal: {
        get aborted() {
          return isCancelled();
        },
        addEventListener: (_type, listener) => void this.#cancelled.push(listener),
      },
      progress(words, fraction) {
        if (goesOn())
          progress.offer({
            step: "progress",
            id,
            words,
            ...(fraction === undefined ? {} : { fraction }),
          });
      },
      improved(value) {
        if (goesOn()) improved.offer(value);
      },
      async pause(before) {
        for (const sluice of [progress, improved]) {
          if (!goesOn()) break;
          if (before === "uninterrupted") sluice.flush();
          else sluice.look();
        }
        await turn();
      },
    };
  }

  cancel(): void {
    if (this.#state !== "under way") return;
    this.#state = "cancelled";
    for (const listener of this.#cancelled) listener();
  }

  end(): void {
    if (this.#state === "under way") this.#state = "over";
  }
}
