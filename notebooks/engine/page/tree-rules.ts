/**
 * What may stand in a drawing: everything that is not named here is left out. A chart's own figure
 * becomes a plain block, and its heading and caption go: the page's figure has them.
 */
export const tags: readonly ReadonlySet<string>[] = [
  new Set(
    "div span p b i strong em small sub sup br ul ol li dl dt dd table caption thead tbody tfoot tr th td".split(
      " ",
    ),
  ),
  new Set(
    "svg g path line rect circle ellipse polygon polyline text tspan title desc defs clipPath linearGradient radialGradient stop pattern marker mask".split(
      " ",
    ),
  ),
];

/** Attributes that take plain values: numbers, words, paths. No address fits in one. */
export const attributes: ReadonlySet<string> = new Set(
  (
    "class id x y x1 x2 y1 y2 cx cy r rx ry d dx dy width height points viewBox preserveAspectRatio " +
    "transform rotate textLength lengthAdjust offset patternUnits patternContentUnits patternTransform " +
    "gradientUnits gradientTransform clipPathUnits maskUnits markerWidth markerHeight markerUnits refX refY " +
    "orient fx fy pathLength fill fill-opacity fill-rule stroke stroke-width stroke-opacity " +
    "stroke-dasharray stroke-dashoffset stroke-linecap stroke-linejoin stroke-miterlimit opacity color " +
    "stop-color stop-opacity font-size font-weight font-family font-style font-stretch " +
    "font-variant text-anchor dominant-baseline alignment-baseline " +
    "baseline-shift letter-spacing word-spacing writing-mode paint-order shape-rendering " +
    "text-rendering vector-effect visibility overflow clip-path clip-rule mask marker-start marker-mid " +
    "marker-end role aria-label aria-labelledby aria-describedby aria-hidden aria-roledescription " +
    "title lang dir colspan rowspan scope focusable"
  ).split(" "),
);

/** Attributes that may point at a part of the same drawing: `url(#name)`. */
export const pointing: ReadonlySet<string> = new Set(
  "fill stroke clip-path mask marker-start marker-mid marker-end".split(" "),
);

/** Parts that are drawn again wherever something points at them. */
export const drawnAgain: ReadonlySet<string> = new Set("pattern marker mask clipPath".split(" "));

/** What a part of a drawing may say it is; never an alert, a dialog or a control of the page. */
export const roles: ReadonlySet<string> = new Set(
  (
    "img figure group list listitem none presentation note table row rowgroup cell columnheader " +
    "rowheader caption graphics-document graphics-object graphics-symbol"
  ).split(" "),
);

/** Attributes that name parts of the same drawing by id. */
export const naming: ReadonlySet<string> = new Set("aria-labelledby aria-describedby".split(" "));

export const styles: ReadonlySet<string> = new Set(
  (
    "fill fill-opacity stroke stroke-width stroke-opacity stroke-dasharray stroke-linecap stroke-linejoin opacity " +
    "color font-size font-weight font-style font-family font-stretch font-variant font-feature-settings " +
    "font-variant-numeric text-anchor dominant-baseline white-space overflow visibility max-width height"
  ).split(" "),
);

/** Values that could fetch, run or escape: an address, a function of addresses, an escape. */
export const unsafeValue = /url\s*\(|image|expression|javascript|[\\@{}<>]|\/\*|:\/\//i;
