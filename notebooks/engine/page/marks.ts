import { svgEl } from "./dom.ts";

/** The house's own mark: a bed in section, open at the top. */
export const houseMark = () =>
  svgEl(
    "svg",
    { viewBox: "0 0 24 20", "aria-hidden": "true" },
    svgEl("path", { d: "M2 2v16h20V2", fill: "none", stroke: "currentColor", "stroke-width": 3 }),
    svgEl("path", { d: "M6 9h12", stroke: "currentColor", "stroke-width": 2 }),
  );

/** A red cloth, as on a long load: caution. */
export const clothMark = () =>
  svgEl(
    "svg",
    { class: "flag", viewBox: "0 0 30 20", "aria-hidden": "true" },
    svgEl("path", { class: "cloth", d: "M0 0C8 4 18-2 30 3C24 8 26 12 28 17C18 12 9 20 0 15Z" }),
  );

/** The cloth on its pole, small, beside words. */
export const flagMark = () =>
  svgEl(
    "svg",
    { class: "mark", viewBox: "0 0 24 20", "aria-hidden": "true" },
    svgEl("path", { d: "M4 1v18", "stroke-width": 2.5 }),
    svgEl("path", { class: "cloth", d: "M5 2C10 5 15 0 22 3C19 6 20 9 21 12C15 9 11 13 5 11Z" }),
  );

/** A split board: something is broken or can't be read. */
export const splitMark = () =>
  svgEl(
    "svg",
    { class: "mark", viewBox: "0 0 24 20", "aria-hidden": "true" },
    svgEl("path", {
      class: "split",
      d: "M1 5h9l-2.4 3 2.6 2.4L8 15H1zM23 5H13l-2.4 3 2.6 2.4L11 15h12z",
    }),
  );
