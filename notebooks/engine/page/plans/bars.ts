import { el, setAttribute, svgEl } from "../dom.ts";
import { onPaper, sheetWidth } from "../on-paper.ts";

/** One bar, from one value to another on a common scale. */
export interface Bar {
  readonly label: string;
  readonly from: number;
  readonly to: number;
  /** Words at the ends of the bar. */
  readonly fromWords: string;
  readonly toWords: string;
  /** A solid bar or, for one that stands back, an outlined one. */
  readonly plain?: boolean;
  /** A heavier label, as for what is in use. */
  readonly strong?: boolean;
}

export interface BarsDrawing {
  readonly bars: readonly Bar[];
  /** A line across all bars, with words over it: what the bars are measured from. */
  readonly line: { readonly at: number; readonly words: string };
  /** What a person who cannot see it needs to know. */
  readonly alternative: string;
  readonly caption: string;
}

/** Bars drawn for the width there is: labels stand at the left where it is broad, else over them. */
export class BarsView {
  readonly element = el("figure", { class: "pic bars" });
  readonly #holder = el("div", { class: "drawn" });
  readonly #caption = el("figcaption");
  #drawing: BarsDrawing | undefined;
  #width = 0;
  #onPaper = false;

  constructor() {
    this.element.append(this.#holder, this.#caption);
    onPaper(this.element, {
      begin: () => this.#fit(true),
      end: () => this.#fit(false),
    });
    new ResizeObserver(() => this.#draw()).observe(this.#holder);
  }

  show(drawing: BarsDrawing | undefined): void {
    const key = JSON.stringify(drawing);
    if (key === JSON.stringify(this.#drawing)) return;
    this.#drawing = drawing;
    this.element.hidden = drawing === undefined;
    this.#caption.textContent = drawing?.caption ?? "";
    this.#width = 0;
    this.#draw();
  }

  #fit(paper: boolean): void {
    this.#onPaper = paper;
    this.#draw();
  }

  #draw(): void {
    const width = this.#onPaper ? sheetWidth : this.#holder.clientWidth;
    if (this.#drawing === undefined || width === 0 || width === this.#width) return;
    this.#width = width;
    this.#holder.replaceChildren(barsDrawn(this.#drawing, width));
  }
}

const broad = 560;

/** About how wide a letter is, in the drawings' face at 14 px. */
const letter = 7;

function barsDrawn({ bars, line, alternative }: BarsDrawing, width: number): SVGElement {
  const isBroad = width >= broad;
  const longest = Math.max(...bars.map(({ label }) => label.length), 0);
  const left = isBroad ? Math.min(width * 0.34, longest * letter + 16) : 0;
  const ends = Math.max(
    ...bars.flatMap(({ fromWords, toWords }) => [fromWords.length, toWords.length]),
  );
  const beside = Math.min(width * 0.24, ends * letter + 10);
  const values = [line.at, ...bars.flatMap(({ from, to }) => [from, to])];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  // Words stand before a bar only where one begins at other than the line.
  const before = bars.some(({ from, to }) => Math.min(from, to) < line.at) ? beside : 4;
  const span = Math.max(1, width - left - before - beside);
  const x = (value: number) =>
    left + before + (most === least ? 0 : ((value - least) / (most - least)) * span);
  const step = isBroad ? 34 : 54;
  const top = line.words === "" ? 6 : 26;
  const height = top + bars.length * step + 6;
  const drawing = svgEl(
    "svg",
    { class: "drawing", viewBox: `0 0 ${width} ${height}`, role: "img", "aria-label": alternative },
    ...bars.map((_, index) => {
      // A line through all of them, but not through the labels over them.
      const y = top + index * step;
      return isBroad ? baseLine(x(line.at), y - 4, y + step) : baseLine(x(line.at), y + 20, y + 48);
    }),
    ...(line.words === "" ? [] : [lineWords(line.words, x(line.at), width)]),
    ...bars.flatMap((bar, index) => {
      const y = top + index * step;
      return barParts(bar, { x, y, left, isBroad, width });
    }),
  );
  setAttribute(drawing, "width", width);
  setAttribute(drawing, "height", height);
  return drawing;
}

function baseLine(x: number, from: number, to: number): SVGElement {
  return svgEl("line", { class: "base", x1: x, x2: x, y1: from, y2: to });
}

function lineWords(words: string, at: number, width: number): SVGElement {
  const half = (words.length * letter) / 2;
  const middle = Math.min(Math.max(at, half), width - half);
  return svgEl("text", { class: "note", x: middle, y: 14, "text-anchor": "middle" }, words);
}

interface Place {
  x(value: number): number;
  readonly y: number;
  readonly left: number;
  readonly isBroad: boolean;
  readonly width: number;
}

function barParts(bar: Bar, { x, y, left, isBroad, width }: Place): SVGElement[] {
  const [low, high] = bar.from <= bar.to ? [bar.from, bar.to] : [bar.to, bar.from];
  const [lowWords, highWords] =
    bar.from <= bar.to ? [bar.fromWords, bar.toWords] : [bar.toWords, bar.fromWords];
  const barTop = isBroad ? y + 7 : y + 24;
  const [x1, x2] = [x(low), x(high)];
  const room = isBroad ? left - 12 : width;
  const label = cut(bar.label, Math.floor(room / letter));
  const labelAt = isBroad ? { x: left - 12, y: y + 21, "text-anchor": "end" } : { x: 0, y: y + 16 };
  return [
    svgEl("text", { class: bar.strong ? "strong" : undefined, ...labelAt }, label),
    svgEl("rect", {
      class: bar.plain ? "bar plainbar" : "bar",
      x: x1,
      y: barTop,
      width: Math.max(1.5, x2 - x1),
      height: 20,
    }),
    ...(lowWords === ""
      ? []
      : [
          svgEl(
            "text",
            { class: "note", x: x1 - 6, y: barTop + 15, "text-anchor": "end" },
            lowWords,
          ),
        ]),
    ...(highWords === "" ? [] : [svgEl("text", { x: x2 + 6, y: barTop + 15 }, highWords)]),
  ];
}

function cut(text: string, most: number): string {
  return text.length <= most ? text : `${text.slice(0, Math.max(1, most - 1))}…`;
}
