import type { CellId, CellState, ReferenceExample, Units } from "../../types/index.ts";
import type { PageOptions } from "../options.ts";
import { SideRoom } from "../side-room.ts";
import {
  type ExampleResults,
  exampleNotebook,
  exampleResults,
  type NumberedExample,
} from "./example-notebook.ts";

/** How an example stands: what came of it is shown beside it. */
export type ExampleState =
  | { readonly kind: "waits" }
  | { readonly kind: "going" }
  | { readonly kind: "done"; readonly results: ExampleResults };

interface Shown extends NumberedExample {
  readonly element: HTMLElement;
  /** Worked out only when somebody asks. */
  readonly onAsking: boolean;
  show(state: ExampleState): void;
}

/**
 * Works the examples out that are in sight, in a closed room of their own: together, as they come
 * into sight, one notebook after another. Long ones wait until somebody asks for them.
 */
export class LiveExamples {
  readonly #options: PageOptions;
  readonly #shown = new Map<Element, Shown>();
  readonly #watch: IntersectionObserver;
  #room: SideRoom | undefined;
  #waiting: Shown[] = [];
  #isGoing = false;
  #units: Units;
  #count = 0;

  constructor(options: PageOptions, units: Units) {
    this.#options = options;
    this.#units = units;
    this.#watch = new IntersectionObserver((entries) => {
      for (const { isIntersecting, target } of entries) if (isIntersecting) this.#seen(target);
    });
  }

  /** Watches an example: it is worked out when its element comes into sight. Gives how to ask for it. */
  add(
    element: HTMLElement,
    steps: ReferenceExample,
    { onAsking, show }: Pick<Shown, "onAsking" | "show">,
  ): () => void {
    this.#count += 1;
    const example = { number: this.#count, steps, element, onAsking, show };
    this.#shown.set(element, example);
    show({ kind: "waits" });
    if (!onAsking) this.#watch.observe(element);
    return () => this.#ask(example);
  }

  /** Forgets the examples that are on the page no more. */
  forget(): void {
    this.#watch.disconnect();
    this.#shown.clear();
    this.#waiting = [];
  }

  /** Prints in these units from now on; what is in sight is worked out again. */
  setUnits(units: Units): void {
    this.#units = units;
    this.#watch.disconnect();
    for (const example of this.#shown.values()) {
      example.show({ kind: "waits" });
      if (!example.onAsking) this.#watch.observe(example.element);
    }
  }

  end(): void {
    this.forget();
    this.#room?.remove();
    this.#room = undefined;
  }

  #seen(target: Element): void {
    this.#watch.unobserve(target);
    const example = this.#shown.get(target);
    if (example) this.#ask(example);
  }

  #ask(example: Shown): void {
    example.show({ kind: "going" });
    this.#waiting.push(example);
    // Those that come into sight together are worked out together.
    if (!this.#isGoing) void this.#go();
  }

  async #go(): Promise<void> {
    this.#isGoing = true;
    while (this.#waiting.length > 0) {
      const examples = this.#waiting;
      this.#waiting = [];
      await this.#work(examples);
    }
    this.#isGoing = false;
  }

  async #work(examples: readonly Shown[]): Promise<void> {
    const notebook = exampleNotebook(examples);
    const open = new Set(examples);
    const heard = ({ states }: { readonly states: ReadonlyMap<CellId, CellState> }) => {
      for (const example of open) {
        const results = exampleResults(example, states);
        if (!results) continue;
        open.delete(example);
        example.show({ kind: "done", results });
      }
    };
    let failed = "Nothing came of it.";
    try {
      this.#room ??= new SideRoom(this.#options);
      const asked = {
        main: notebook.file,
        documents: new Map([[notebook.file, notebook]]),
        entered: {},
        units: this.#units,
      };
      heard(await this.#room.open(asked, heard));
    } catch (error) {
      failed = error instanceof Error ? error.message : String(error);
    }
    for (const example of open)
      example.show({ kind: "done", results: { results: new Map(), failed } });
  }
}
