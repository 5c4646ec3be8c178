import type { Shown, Tree } from "../../types/index.ts";
import { limits } from "./limits.ts";
import { capped, isList, isObject, itemsOf, ownKeys, property, tried } from "./safe.ts";

type ShownDrawing = Extract<Shown, { kind: "drawing" }>;

/** A drawing record of the library; undefined where it is not one through and through. */
export function showDrawing(value: object): ShownDrawing | undefined {
  const forms = property(value, "forms");
  if (property(value, "kind") !== "drawing" || !isList(forms)) return undefined;
  const budget = { nodes: limits.treeNodes };
  const shown = itemsOf(forms, limits.forms).flatMap((form) => {
    if (!isObject(form)) return [];
    const tree = cleanTree(property(form, "tree"), budget);
    const from = property(form, "from");
    return tree === undefined ? [] : [{ from: typeof from === "number" ? from : 0, tree }];
  });
  if (shown.length === 0) return undefined;
  const caption = property(value, "caption");
  return {
    kind: "drawing",
    drawing: {
      title: text(property(value, "title")),
      alternative: text(property(value, "alternative")),
      ...(typeof caption === "string" && caption !== "" ? { caption: text(caption) } : {}),
      forms: shown,
    },
  };
}

/**
 * An element of the small document that charts are drawn into. Its words are its own heading, its
 * caption and what its first picture says of itself.
 */
export function showElement(value: object): ShownDrawing | undefined {
  if (property(value, "nodeType") !== 1) return undefined;
  const tree = tried(() => elementTree(value, { nodes: limits.treeNodes }), undefined);
  if (tree === undefined) return undefined;
  const words = wordsIn(tree);
  const title = words.heading ?? words.label ?? words.caption ?? "";
  const alternative = words.description ?? words.label ?? words.caption ?? title;
  return {
    kind: "drawing",
    drawing: {
      title,
      alternative,
      ...(words.caption === undefined ? {} : { caption: words.caption }),
      forms: [{ from: 0, tree }],
    },
  };
}

interface Words {
  heading?: string;
  caption?: string;
  label?: string;
  description?: string;
}

function wordsIn(tree: Tree, words: Words = {}): Words {
  if (typeof tree === "string") return words;
  const [, name, attributes, children] = tree;
  if (name === "h2" || name === "h3") words.heading ??= textIn(tree);
  if (name === "figcaption") words.caption ??= textIn(tree);
  if (name === "svg" || name === "figure") {
    if (attributes["aria-label"]) words.label ??= attributes["aria-label"];
    if (attributes["aria-description"]) words.description ??= attributes["aria-description"];
  }
  // The marks inside a picture have labels of their own, which say less.
  if (name !== "svg") for (const child of children) wordsIn(child, words);
  return words;
}

function textIn(tree: Tree): string {
  return typeof tree === "string" ? tree : tree[3].map(textIn).join("");
}

/** A tree made again from plain parts, so that nothing odd goes on from it. */
function cleanTree(value: unknown, budget: { nodes: number }): Tree | undefined {
  if (typeof value === "string") return capped(value, limits.text);
  if (!isList(value) || budget.nodes <= 0) return undefined;
  budget.nodes -= 1;
  const [space, name, attributes, children] = itemsOf(value, 4);
  if ((space !== 0 && space !== 1) || typeof name !== "string") return undefined;
  const clean: Tree[] = [];
  for (const child of isList(children) ? itemsOf(children, budget.nodes) : []) {
    // A tree is itself a list, so it must not be spread into its parent's.
    const tree = cleanTree(child, budget);
    if (tree !== undefined) clean.push(tree);
  }
  return [space, name, cleanAttributes(attributes), clean];
}

function cleanAttributes(value: unknown): Record<string, string> {
  const clean: Record<string, string> = {};
  if (!isObject(value)) return clean;
  for (const key of ownKeys(value, limits.fields)) {
    const attribute = property(value, key);
    if (typeof attribute === "string") clean[key] = capped(attribute, limits.text * 10);
    if (typeof attribute === "number") clean[key] = String(attribute);
  }
  return clean;
}

function elementTree(node: object, budget: { nodes: number }): Tree | undefined {
  if (property(node, "nodeType") === 3) return text(property(node, "data"));
  if (property(node, "nodeType") !== 1 || budget.nodes <= 0) return undefined;
  budget.nodes -= 1;
  const attributes: Record<string, string> = {};
  const names = property(node, "attributes");
  if (isList(names)) {
    for (const pair of names as readonly { name: unknown; value: unknown }[]) {
      attributes[text(pair.name)] = capped(String(pair.value), limits.text * 10);
    }
  }
  const children: Tree[] = [];
  for (const child of property(node, "childNodes") as readonly unknown[]) {
    const tree = isObject(child) ? elementTree(child, budget) : undefined;
    if (tree !== undefined) children.push(tree);
  }
  const space = text(property(node, "namespaceURI")).endsWith("svg") ? 1 : 0;
  return [space, text(property(node, "localName")), attributes, children];
}

function text(value: unknown): string {
  return typeof value === "string" ? capped(value, limits.text) : "";
}
