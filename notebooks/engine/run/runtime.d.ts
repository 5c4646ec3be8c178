// The package ships no types; this is all of it that `graph.ts` calls, one internal method included.
declare module "@observablehq/runtime" {
  export interface Observer {
    pending(): void;
    fulfilled(value: unknown): void;
    rejected(error: unknown): void;
  }
  export interface Variable {
    define(name: string, inputs: readonly string[], definition: unknown): this;
    delete(): this;
  }
  export interface Module {
    variable(observer: Observer): Variable;
  }
  export class Runtime {
    constructor(builtins: Record<string, unknown>, global: (name: string) => unknown);
    module(): Module;
    dispose(): void;
    /** Internal: waits for an animation frame before a pass. Replaced by `graph.ts`. */
    _computeSoon: () => Promise<void>;
    /** Internal: works out everything that is out of date. */
    _computeNow: () => Promise<void>;
  }
  /** `input` names the variable that was needed and has an error. */
  export class RuntimeError extends Error {
    input?: string;
  }
}
