import * as plotLibrary from "@observablehq/plot";
import { TinyDocument } from "../notebooks/engine/run/index.ts";

// Plot only ever makes elements, so the small document is enough for it.
const document = new TinyDocument() as unknown as Document;

type Options = plotLibrary.PlotOptions;
type WithDocument = { document: Document };

const drawn = (options: Options = {}) =>
  plotLibrary.plot({ ...options, document } as Options & WithDocument);

/** `Plot` as cells have it: it draws into a document of its own, as there is no page. */
export const Plot = Object.freeze({
  ...plotLibrary,
  plot: drawn,
  legend: (options: plotLibrary.LegendOptions) =>
    plotLibrary.legend({ ...options, document } as plotLibrary.LegendOptions & WithDocument),
});

// A mark's own `plot` would look for a page.
const mark = (plotLibrary as unknown as { Mark: { prototype: { plot: unknown } } }).Mark.prototype;
mark.plot = function plotMark(this: plotLibrary.Markish, options: Options = {}) {
  const { marks = [], ...others } = options;
  return drawn({ ...others, marks: [...marks, this] });
};
