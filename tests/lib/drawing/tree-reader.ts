import type { Drawing, Tree } from "../../../lib/index.ts";

export interface Mark {
  readonly name: string;
  readonly kind: string;
  readonly text: string;
  readonly at: Readonly<Record<string, string>>;
}

/** All elements of a form, outermost first, with their text. */
export function marks(tree: Tree): readonly Mark[] {
  if (typeof tree === "string") return [];
  const [, name, at, children] = tree;
  const mark = { name, kind: at.class ?? "", text: textOf(tree), at };
  return [mark, ...children.flatMap(marks)];
}

function textOf(tree: Tree): string {
  return typeof tree === "string" ? tree : tree[3].map(textOf).join("");
}

export function formAt(drawing: Drawing, from: number): readonly Mark[] {
  const form = drawing.forms.find((each) => each.from === from);
  if (form === undefined) throw new Error(`no form from ${from}`);
  return marks(form.tree);
}

export const texts = (all: readonly Mark[]): readonly string[] =>
  all.filter(({ name }) => name === "text").map(({ text }) => text);

/** Width of the first form's picture, from its view box. */
export function sizeOf(all: readonly Mark[]): { readonly width: number; readonly height: number } {
  const [, , width = 0, height = 0] = (all[0]?.at.viewBox ?? "").split(" ").map(Number);
  return { width, height };
}
