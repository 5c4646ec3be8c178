/// <reference path="./runtime.d.ts" />
import { Runtime, RuntimeError, type Variable } from "@observablehq/runtime";

/** What a graph tells its owner. A key may be started again before its last start has ended. */
export interface GraphEvents {
  /** A key is out of date and will be worked out; whatever its last run is doing is superseded. */
  started(key: string): void;
  value(key: string, value: unknown): void;
  /** `input` is the key that was needed and has an error; undefined when the key itself failed. */
  failed(key: string, error: unknown, input: string | undefined): void;
  /** A key that gives value after value is about to work out its next one. */
  stepping(key: string): void;
  /** A pass has been started off; values may still be on their way. */
  passed(): void;
}

export type Definition = (...values: readonly unknown[]) => unknown;

/** Named values that depend on each other. */
export interface Graph {
  /** Adds or replaces a key; what depends on it is worked out again, once for all changes of a turn. */
  define(key: string, inputs: readonly string[], definition: Definition): void;
  remove(key: string): void;
  /** Whether a pass is about to begin. */
  readonly scheduled: boolean;
  dispose(): void;
}

interface Node {
  readonly variable: Variable;
  drop: ((reason: unknown) => void) | undefined;
}

/** Why a run that was overtaken ends; nobody is shown it. */
const superseded = new Error("superseded");

/** How long a cell that gives value after value is held between two of them, in milliseconds. */
const paceMs = 40;

/**
 * Makes a graph over the reactive runtime. This is the one place that touches the runtime's
 * internals, for two reasons: it waits for an animation frame before each pass, which in a hidden
 * frame never comes; and a promise that never settles blocks its variable for good, even after it
 * is redefined, so every run is raced against being superseded.
 *
 * @param wait - gives a promise that settles after so many milliseconds
 */
export function createGraph(events: GraphEvents, wait: (ms: number) => Promise<void>): Graph {
  const runtime = new Runtime({}, () => undefined);
  const module = runtime.module();
  const nodes = new Map<string, Node>();
  let passes = 0;
  let disposed = false;

  runtime._computeSoon = () => {
    passes += 1;
    return Promise.resolve()
      .then(() => (disposed ? undefined : runtime._computeNow()))
      .finally(() => {
        passes -= 1;
        if (!disposed) events.passed();
      });
  };

  function addNode(key: string): Node {
    const live = () => !disposed && nodes.get(key) === node;
    const variable = module.variable({
      pending: () => {
        drop(node);
        if (live()) events.started(key);
      },
      fulfilled: (value) => {
        if (live()) events.value(key, value);
      },
      rejected: (error) => {
        if (live()) events.failed(key, error, inputOf(error));
      },
    });
    const node: Node = { variable, drop: undefined };
    nodes.set(key, node);
    return node;
  }

  return {
    define(key, inputs, definition) {
      const node = nodes.get(key) ?? addNode(key);
      node.variable.define(key, inputs, (...values: readonly unknown[]) =>
        guarded(node, definition(...values), { wait, stepping: () => events.stepping(key) }),
      );
    },
    remove(key) {
      const node = nodes.get(key);
      if (node === undefined) return;
      drop(node);
      node.variable.delete();
      nodes.delete(key);
    },
    get scheduled() {
      return passes > 0;
    },
    dispose() {
      disposed = true;
      runtime.dispose();
      for (const node of nodes.values()) drop(node);
    },
  };
}

function drop(node: Node): void {
  node.drop?.(superseded);
  node.drop = undefined;
}

function inputOf(error: unknown): string | undefined {
  return error instanceof RuntimeError ? error.input : undefined;
}

/** The result of a run, let go of as soon as the run is superseded. */
function guarded(node: Node, result: unknown, pace: Pace): unknown {
  if (isGenerator(result)) return paced(node, result, pace);
  return isThenable(result) ? raced(node, result) : result;
}

function raced<T>(node: Node, result: PromiseLike<T>): Promise<T> {
  return Promise.race([
    result,
    new Promise<never>((_, reject) => {
      node.drop = reject;
    }),
  ]);
}

/** Values one after the other, never faster than the pace, or a loop without end would starve all. */
function paced(node: Node, inner: Stepped, { wait, stepping }: Pace): Stepped {
  let first = true;
  async function step(value: unknown): Promise<IteratorResult<unknown>> {
    if (!first) {
      await wait(paceMs);
      stepping();
    }
    first = false;
    return inner.next(value);
  }
  return {
    next: (value) => raced(node, step(value)),
    return: () => inner.return(),
  };
}

interface Pace {
  wait(ms: number): Promise<void>;
  stepping(): void;
}

interface Stepped {
  next(value: unknown): IteratorResult<unknown> | PromiseLike<IteratorResult<unknown>>;
  return(): unknown;
}

function isGenerator(value: unknown): value is Stepped {
  if (typeof value !== "object" || value === null) return false;
  const { next, return: finish } = value as Partial<Stepped>;
  return typeof next === "function" && typeof finish === "function";
}

function isThenable(value: unknown): value is PromiseLike<unknown> {
  if (typeof value !== "object" || value === null) return false;
  return typeof (value as Partial<PromiseLike<unknown>>).then === "function";
}
