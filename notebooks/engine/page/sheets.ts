/** What a Letter sheet has for a drawing with its title, in CSS pixels; A4 is higher. */
const sheet = { width: 710, height: 860 } as const;

/**
 * Cuts a drawing that is taller than a sheet into pieces that fit, at heights where nothing is
 * drawn, so that no board is torn between two sheets. A drawing that says which of its parts stay
 * together is cut between all of them where it is taller than half a sheet, so that it fills what is
 * left of one. Gives the drawing alone where it fits.
 */
export function cutForSheets(drawing: SVGSVGElement): readonly SVGSVGElement[] {
  const [x = 0, top = 0, width = 0, height = 0] = (drawing.getAttribute("viewBox") ?? "")
    .split(/\s+/)
    .map(Number);
  // The drawing fills the sheet's width, so its own pixels are larger or smaller than the sheet's.
  const most = (sheet.height * width) / sheet.width;
  const parts = drawing.querySelectorAll<SVGGElement>(":scope > g.keep");
  if (parts.length > 1 && height > most / 2)
    return cutBetween(drawing, [...parts], { x, top, width, height });
  if (!(height > most)) return [drawing];
  const bottom = top + height;
  const starts = [top, ...cutsBetween(spansOf(drawing), { top, bottom, most })];
  return starts.map((from, index) => {
    const to = starts[index + 1] ?? bottom;
    const piece = drawing.cloneNode(true) as SVGSVGElement;
    piece.setAttribute("viewBox", `${x} ${from} ${width} ${to - from}`);
    piece.classList.add("sheet");
    // The words for who can't see it are said once.
    if (index > 0) piece.setAttribute("aria-hidden", "true");
    return piece;
  });
}

/** A piece for each part that stays together, one under the other as they were. */
function cutBetween(
  drawing: SVGSVGElement,
  parts: readonly SVGGElement[],
  box: {
    readonly x: number;
    readonly top: number;
    readonly width: number;
    readonly height: number;
  },
): readonly SVGSVGElement[] {
  const starts = parts.map((part, index) => (index === 0 ? box.top : part.getBBox().y - 2));
  return parts.map((part, index) => {
    const from = starts[index] ?? box.top;
    const to = starts[index + 1] ?? box.top + box.height;
    const piece = drawing.cloneNode(false) as SVGSVGElement;
    piece.append(part.cloneNode(true));
    piece.setAttribute("viewBox", `${box.x} ${from} ${box.width} ${to - from}`);
    piece.classList.add("sheet");
    if (index > 0) piece.setAttribute("aria-hidden", "true");
    return piece;
  });
}

type Span = readonly [top: number, bottom: number];

function spansOf(drawing: SVGSVGElement): readonly Span[] {
  const marks = drawing.querySelectorAll<SVGGraphicsElement>(
    "rect, text, path, line, circle, polygon",
  );
  return [...marks].map((mark) => {
    const { y, height } = mark.getBBox();
    return [y, y + height] as const;
  });
}

/**
 * Free heights that leave no piece taller than `most`: wide bands before narrow ones, so that a
 * heading stays with what it heads, as long as the sheet is more than half full.
 */
export function cutsBetween(
  spans: readonly Span[],
  { top, bottom, most }: { readonly top: number; readonly bottom: number; readonly most: number },
): number[] {
  const gaps = gapsOf(spans);
  const cuts: number[] = [];
  for (let from = top; bottom - from > most; ) {
    const fitting = gaps.filter(({ at }) => at > from + most / 2 && at <= from + most);
    const widest = Math.max(0, ...fitting.map(({ size }) => size));
    const cut = fitting.filter(({ size }) => size >= widest * 0.8).at(-1)?.at ?? from + most;
    cuts.push(cut);
    from = cut;
  }
  return cuts;
}

interface Gap {
  readonly at: number;
  readonly size: number;
}

/** Bands where nothing is drawn, by their middle. */
function gapsOf(spans: readonly Span[]): Gap[] {
  const sorted = [...spans].sort(([a], [b]) => a - b);
  const gaps: Gap[] = [];
  let reached = Number.POSITIVE_INFINITY;
  for (const [from, to] of sorted) {
    if (from > reached + 1) gaps.push({ at: (reached + from) / 2, size: from - reached });
    reached = Number.isFinite(reached) ? Math.max(reached, to) : to;
  }
  return gaps;
}
