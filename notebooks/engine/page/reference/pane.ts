import type { Context } from "../context.ts";
import { openPane } from "../pane.ts";
import { ReferenceView } from "./reference-view.ts";

/** The reference in a sheet over the notebook: at one name, or at its contents. */
export function referencePane(context: Context, name?: string): void {
  const view = new ReferenceView(context.options, { units: context.driver.units, level: 3 });
  openPane({
    title: "Reference",
    className: "refpane",
    content: [view.element],
    closed: () => view.end(),
  });
  view.show(name === undefined ? {} : { name });
}
