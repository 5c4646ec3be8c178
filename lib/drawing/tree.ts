/**
 * A drawing as plain data: text, or an element with its name space (1 is SVG), name, attributes and
 * children. Whoever shows it builds nodes from it; no markup text is ever made.
 */
export type Tree =
  | string
  | readonly [
      space: 0 | 1,
      name: string,
      attributes: Readonly<Record<string, string>>,
      children: readonly Tree[],
    ];

/** A drawing in the forms it was made in, drawn again for each width, never shrunk. */
export interface Drawing {
  readonly kind: "drawing";
  readonly title: string;
  /** What a person who cannot see it needs to know. */
  readonly alternative: string;
  readonly caption?: string;
  /** `from` is the least width in CSS pixels at which a form is used; the narrowest has 0. */
  readonly forms: readonly { readonly from: number; readonly tree: Tree }[];
}

type Value = string | number;

/** A number as an attribute: tenths of a pixel are enough, and keep the tree small. */
export function px(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** One SVG element. Numbers are rounded to tenths. */
export function svg(
  name: string,
  attributes: Readonly<Record<string, Value>>,
  children: readonly Tree[] = [],
): Tree {
  const texts: Record<string, string> = {};
  for (const [key, value] of Object.entries(attributes)) {
    texts[key] = typeof value === "number" ? px(value) : value;
  }
  return [1, name, texts, children];
}

/** A rectangle of a class. */
export function box(kind: string, x: number, y: number, width: number, height: number): Tree {
  return svg("rect", { class: kind, x, y, width: Math.max(width, 0), height: Math.max(height, 0) });
}

/** Lines of a class, each from one point to another, as one path. */
export function lines(
  kind: string,
  each: readonly (readonly [x1: number, y1: number, x2: number, y2: number])[],
): Tree {
  const d = each.map(([x1, y1, x2, y2]) => `M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}`).join("");
  return svg("path", { class: kind, d });
}

export interface TextPlace {
  readonly x: number;
  readonly y: number;
  readonly anchor?: "start" | "middle" | "end";
}

/** Text of a class; fractions such as 15⁄16 are set apart so that the face can stack them. */
export function words(kind: string, text: string, place: TextPlace): Tree {
  const { x, y, anchor = "start" } = place;
  const at = anchor === "start" ? { x, y } : { x, y, "text-anchor": anchor };
  return svg("text", { class: kind, ...at }, withFractions(text));
}

const fraction = /(\d+⁄\d+)/;

/** Text with its fractions in elements of class `frac`. */
export function withFractions(text: string): readonly Tree[] {
  const parts = text.split(fraction);
  return parts.flatMap((part, at): readonly Tree[] => {
    if (part === "") return [];
    if (!fraction.test(part)) return [part];
    // A stacked fraction stands close to its whole number; the blank stays for those who hear it.
    const close = /\d $/.test(parts[at - 1] ?? "") ? { dx: -2.5 } : {};
    return [svg("tspan", { class: "frac", ...close }, [part])];
  });
}

/** The whole picture: its size, its alternative for screen readers, its parts. */
export function picture(
  kind: string,
  size: { readonly width: number; readonly height: number },
  alternative: string,
  parts: readonly Tree[],
): Tree {
  return svg(
    "svg",
    {
      class: `drawing ${kind}`,
      viewBox: `0 0 ${px(size.width)} ${px(size.height)}`,
      role: "img",
      "aria-label": alternative,
    },
    parts,
  );
}
