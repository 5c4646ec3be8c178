import type { ReferenceExample, Shown } from "../../types/index.ts";
import { button, el } from "../dom.ts";
import { figureNodes } from "../figure-text.ts";
import { ShownView } from "../shown-view.ts";
import type { Sources } from "../sources.ts";
import { type ExampleResult, resultSteps } from "./example-notebook.ts";
import type { ExampleState, LiveExamples } from "./live-examples.ts";

export interface ExampleOptions {
  readonly live: LiveExamples;
  readonly sources: Sources;
  /** Worked out only when somebody asks for it. */
  readonly onAsking: boolean;
  /** Names the example: "Example of bedFill". */
  readonly label: string;
}

/** An example: its statements as one writes them in a cell, each result under its own. */
export function exampleView(steps: ReferenceExample, options: ExampleOptions): HTMLElement {
  const { live, sources, onAsking, label } = options;
  const results = new Set(resultSteps(steps));
  const places = new Map<number, HTMLElement>();
  const lines = steps.flatMap(({ code }, at) => {
    const line = el("pre", {}, code);
    if (!results.has(at)) return [line];
    const place = el("div", { class: "gives" });
    places.set(at, place);
    return [line, place];
  });
  const state = el("p", { class: "state" });
  const element = el(
    "div",
    { class: "example", role: "group", "aria-label": label },
    ...lines,
    state,
  );
  const show = (now: ExampleState) => {
    element.dataset.state = now.kind;
    if (now.kind === "done") {
      const { failed } = now.results;
      for (const [at, place] of places)
        place.replaceChildren(
          ...resultNodes(now.results.results.get(at), steps[at]?.says, sources),
        );
      element.classList.toggle("failed", failed !== undefined);
      state.replaceChildren(
        failed === undefined ? "Worked out just now" : `It can’t be worked out: ${failed}`,
      );
    } else if (now.kind === "going") state.replaceChildren("Being worked out …");
    else state.replaceChildren(onAsking ? asking : "");
  };
  const asking = button("Work it out", () => {
    element.tabIndex = -1;
    element.focus();
    ask();
  });
  const ask = live.add(element, steps, { onAsking, show });
  return element;
}

function resultNodes(
  result: ExampleResult | undefined,
  says: string | undefined,
  sources: Sources,
): Node[] {
  if (!result) return [];
  const { shown, agrees, stated } = result;
  if (agrees) return [shownNode(shown, sources)];
  const words = `Its comment says ${says}; it gives ${stated}.`;
  return [shownNode(shown, sources), el("p", { class: "broken" }, words)];
}

function shownNode(shown: Shown, sources: Sources): HTMLElement {
  if (shown.kind === "figure") {
    const { text, second } = shown.figure;
    const other = second === undefined ? [] : [" ", el("small", {}, ...figureNodes(second))];
    return el("p", {}, el("b", {}, ...figureNodes(text)), ...other);
  }
  if (shown.kind === "text" && !shown.text.includes("\n") && shown.text.length < 80)
    return el("p", {}, el("b", {}, ...figureNodes(shown.text)));
  if (shown.kind === "nothing") return el("p", {}, el("b", {}, "nothing"));
  if (shown.kind === "list" && shown.items.length === 0)
    return el("p", {}, el("b", {}, "an empty list"));
  const view = new ShownView(sources);
  view.show(shown, "It gives");
  view.element.classList.add("ruled");
  return view.element;
}
