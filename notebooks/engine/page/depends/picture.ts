import type { CellId, OutlineCell } from "../../types/index.ts";
import { el, setAttribute, svgEl } from "../dom.ts";
import { type Graph, reached } from "./graph.ts";
import { bandGap } from "./heights.ts";
import { layOut, type Placed, type Way } from "./layout.ts";
import { textWidth, wrapped } from "./text-width.ts";
import { countsInWords, nearOf } from "./words.ts";

export interface PictureOptions {
  readonly graph: Graph;
  /** The file whose cells stand in the first band, and what people call a file and a cell. */
  readonly main: string;
  title(id: CellId): string;
  fileTitle(file: string): string;
  isEntry(id: CellId): boolean;
  /** The cell that has the Tab stop at first. */
  readonly first: CellId | undefined;
  /** Told which cell is looked at; undefined when none is. */
  looked(id: CellId | undefined): void;
  go(id: CellId): void;
}

const pad = { x: 10, y: 8, top: 30 };
const lineHeight = 17;

/**
 * The picture: cells in layers from the left, lines to what they feed. Looking at a cell, by pointer
 * or by keys, sets its lines off; arrow keys go along the lines, Enter goes to the cell.
 */
export class Picture {
  readonly element: HTMLElement;
  readonly #options: PictureOptions;
  readonly #nodes = new Map<CellId, SVGElement>();
  readonly #lines: { readonly way: Way; readonly line: SVGElement }[] = [];
  readonly #placed = new Map<CellId, Placed>();

  constructor(options: PictureOptions) {
    this.#options = options;
    const { graph, main } = options;
    const labels = new Map(graph.cells.map((cell) => [cell.id, this.#label(cell)]));
    const files = [...new Set([main, ...graph.cells.map(({ file }) => file)])];
    const layout = layOut(
      graph.cells.map(({ id, file }) => ({
        id,
        group: files.indexOf(file),
        ...sizeOf(labels.get(id) ?? []),
      })),
      graph.edges,
    );
    for (const box of layout.boxes) this.#placed.set(box.id as CellId, box);
    const lines = layout.ways.map((way) => this.#line(way));
    const cells = graph.cells.map((cell) => this.#node(cell, labels.get(cell.id) ?? []));
    const heads = layout.bands
      .filter(({ group }) => group > 0)
      .map(({ group, top }) => this.#bandHead(files[group] ?? "", top, layout.width));
    const width = Math.ceil(layout.width) + 4;
    const height = Math.ceil(layout.height) + pad.top + 8;
    const svg = svgEl(
      "svg",
      { width, height, viewBox: `-2 ${-pad.top} ${width} ${height}`, role: "group" },
      ...heads,
      svgEl("g", { class: "ways", "aria-hidden": "true" }, ...lines),
      ...cells,
    );
    setAttribute(svg, "aria-label", "What depends on what, from the left to the right");
    this.element = el("div", { class: "dependpic", tabindex: -1 }, svg);
    const first = options.first ?? graph.cells[0]?.id;
    if (first !== undefined) this.#stop(first);
    this.#listen();
  }

  /** Sets the lines of a cell off; all are alike where none is looked at. */
  mark(id: CellId | undefined): void {
    const { edges } = this.#options.graph;
    const { takes, gives } = id === undefined ? { takes: [], gives: [] } : nearOf(id, edges);
    const before: ReadonlySet<string> = id === undefined ? new Set() : reached(id, edges, "from");
    const after: ReadonlySet<string> = id === undefined ? new Set() : reached(id, edges, "to");
    this.element.classList.toggle("looking", id !== undefined);
    for (const [one, node] of this.#nodes) {
      const isNear = takes.includes(one) || gives.includes(one);
      const isFar = before.has(one) || after.has(one);
      setAttribute(
        node,
        "data-is",
        one === id ? "it" : isNear ? "near" : isFar ? "far" : undefined,
      );
    }
    for (const { way, line } of this.#lines) {
      const isNear = way.from === id || way.to === id;
      const leads = before.has(way.from) && (before.has(way.to) || way.to === id);
      const follows = after.has(way.to) && (after.has(way.from) || way.from === id);
      setAttribute(line, "data-is", isNear ? "near" : leads || follows ? "far" : undefined);
      // What is thick lies over what is faint.
      if (isNear) line.parentNode?.append(line);
    }
  }

  /** Gives a cell focus, in sight. */
  focus(id: CellId): void {
    const node = this.#nodes.get(id);
    if (!node) return;
    this.#stop(id);
    node.focus({ preventScroll: true });
    this.#intoSight(node);
  }

  /** Scrolls the picture sideways and the sheet it is in up or down, and nothing else. */
  #intoSight(node: SVGElement): void {
    const box = node.getBoundingClientRect();
    const own = this.element.getBoundingClientRect();
    if (box.left < own.left || box.right > own.right)
      this.element.scrollLeft += (box.left + box.right - own.left - own.right) / 2;
    const sheet = this.element.closest("dialog");
    const seen = sheet?.getBoundingClientRect();
    // The sheet's head stays over its upper edge.
    if (sheet && seen && (box.top < seen.top + 80 || box.bottom > seen.bottom))
      sheet.scrollTop += (box.top + box.bottom - seen.top - seen.bottom) / 2;
  }

  #label({ id, hints }: OutlineCell): readonly string[] {
    return wrapped(this.#options.title(id), 150, hints.pinned);
  }

  #node(cell: OutlineCell, label: readonly string[]): SVGElement {
    const { id, hints } = cell;
    const { title, isEntry, graph } = this.#options;
    const box = this.#placed.get(id);
    const { x = 0, y = 0, width = 0, height = 0 } = box ?? {};
    const kind = cell.what === "table" ? "table" : isEntry(id) ? "entry" : "result";
    const text = label.map((line, at) =>
      svgEl("text", { x: x + pad.x, y: y + pad.y + 12.5 + at * lineHeight }, line),
    );
    const words = [
      title(id),
      kind === "result" ? (hints.quiet ? "a step between" : "") : kind,
      hints.pinned ? "pinned" : "",
      countsInWords(nearOf(id, graph.edges)).toLowerCase(),
    ];
    const node = svgEl(
      "g",
      {
        class: `node ${kind}${hints.pinned ? " pinned" : ""}${hints.quiet ? " quiet" : ""}`,
        role: "link",
        tabindex: -1,
        "data-id": id,
        "aria-label": words.filter(Boolean).join(", "),
      },
      svgEl("rect", { class: "ground", x, y, width, height }),
      ...shapeOf(kind, { x, y, width, height }),
      ...text,
    );
    this.#nodes.set(id, node);
    return node;
  }

  #line(way: Way): SVGElement {
    const line = svgEl("path", { d: pathOf(way.points) });
    this.#lines.push({ way, line });
    return line;
  }

  #bandHead(file: string, top: number, width: number): SVGElement {
    const y = top - bandGap / 2;
    return svgEl(
      "g",
      { class: "band" },
      svgEl("line", { x1: 0, x2: width, y1: y - 8, y2: y - 8 }),
      svgEl("text", { x: 0, y: y + 9 }, `From ${this.#options.fileTitle(file)}`),
    );
  }

  /** One cell at a time has the Tab stop. */
  #stop(id: CellId): void {
    for (const [one, node] of this.#nodes) setAttribute(node, "tabindex", one === id ? 0 : -1);
  }

  #listen(): void {
    const { looked, go } = this.#options;
    const at = ({ target }: Event) =>
      (target instanceof Element ? target.closest<SVGElement>(".node") : null)?.dataset.id as
        | CellId
        | undefined;
    this.element.addEventListener("pointerover", (event) => {
      if (event.pointerType === "mouse") looked(at(event) ?? this.#focused());
    });
    this.element.addEventListener("pointerleave", () => looked(this.#focused()));
    this.element.addEventListener("focusin", (event) => {
      const id = at(event);
      if (id !== undefined) {
        this.#stop(id);
        looked(id);
      }
    });
    this.element.addEventListener("focusout", () => looked(undefined));
    this.element.addEventListener("dblclick", (event) => {
      const id = at(event);
      if (id !== undefined) go(id);
    });
    this.element.addEventListener("click", (event) => {
      const id = at(event);
      if (id !== undefined) this.focus(id);
    });
    this.element.addEventListener("keydown", (event) => this.#key(event, at(event)));
  }

  #key(event: KeyboardEvent, id: CellId | undefined): void {
    if (id === undefined) return;
    if (event.key === "Enter") {
      event.preventDefault();
      this.#options.go(id);
      return;
    }
    const next = this.#along(id, event.key);
    if (next === "no key of ours") return;
    event.preventDefault();
    if (next !== undefined) this.focus(next);
  }

  /** Left to what feeds it, right to what it feeds, up and down within the layer. */
  #along(id: CellId, key: string): CellId | undefined | "no key of ours" {
    const here = this.#placed.get(id);
    const { takes, gives } = nearOf(id, this.#options.graph.edges);
    const nearest = (ids: readonly CellId[]) => {
      const away = (one: CellId) => Math.abs((this.#placed.get(one)?.y ?? 0) - (here?.y ?? 0));
      return ids.toSorted((a, b) => away(a) - away(b))[0];
    };
    if (key === "ArrowLeft") return nearest(takes);
    if (key === "ArrowRight") return nearest(gives);
    if (key !== "ArrowUp" && key !== "ArrowDown") return "no key of ours";
    const layer = [...this.#placed]
      .filter(([, { layer: own }]) => own === here?.layer)
      .sort(([, a], [, b]) => a.y - b.y)
      .map(([one]) => one);
    return layer[layer.indexOf(id) + (key === "ArrowUp" ? -1 : 1)];
  }

  #focused(): CellId | undefined {
    const focused = document.activeElement;
    if (!this.element.contains(focused)) return undefined;
    return (focused?.closest<SVGElement>(".node")?.dataset.id ?? undefined) as CellId | undefined;
  }
}

function sizeOf(label: readonly string[]): { readonly width: number; readonly height: number } {
  const width = Math.max(24, ...label.map((line) => textWidth(line, true))) + 2 * pad.x;
  return { width: Math.ceil(width), height: label.length * lineHeight + 2 * pad.y - 2 };
}

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** An entry is a tray, a table is ruled, a result stands on a line. */
function shapeOf(kind: "entry" | "table" | "result", { x, y, width, height }: Rect): SVGElement[] {
  const [right, floor] = [x + width, y + height];
  if (kind === "entry")
    return [
      svgEl("rect", { class: "wash", x, y: y + height * 0.26, width, height: height * 0.74 }),
      svgEl("path", { class: "edge", d: `M${x} ${y}V${floor}H${right}V${y}` }),
    ];
  if (kind === "table")
    return [
      svgEl("path", { class: "rows", d: `M${x} ${y}H${right}M${x} ${y + 3}H${right}` }),
      svgEl("path", { class: "foot", d: `M${x} ${floor}H${right}` }),
    ];
  return [svgEl("path", { class: "foot", d: `M${x} ${floor}H${right}` })];
}

/** A line that leaves and enters level. */
function pathOf(points: readonly (readonly [number, number])[]): string {
  const [first, ...rest] = points;
  if (!first) return "";
  let [x, y] = first;
  let path = `M${x} ${round(y)}`;
  for (const [nextX, nextY] of rest) {
    const half = round((nextX - x) / 2);
    path +=
      y === nextY
        ? `H${nextX}`
        : `C${x + half} ${round(y)} ${nextX - half} ${round(nextY)} ${nextX} ${round(nextY)}`;
    [x, y] = [nextX, nextY];
  }
  return path;
}

const round = (value: number) => Math.round(value * 10) / 10;
