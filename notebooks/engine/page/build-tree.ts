import type { Tree } from "../types/index.ts";
import {
  attributes,
  drawnAgain,
  naming,
  pointing,
  roles,
  styles,
  tags,
  unsafeValue,
} from "./tree-rules.ts";

const svgSpace = "http://www.w3.org/2000/svg";
const most = { depth: 40, nodes: 60_000, drawnAgain: 200 };

/**
 * Builds nodes from a drawing's tree. Only known tags and attributes are made, never from markup
 * text; nothing that holds an address is kept. Ids get `prefix`, so that no drawing can take the
 * place of a part of the page. What is drawn again wherever it is pointed at (patterns, marks, masks)
 * may hold little and point at nothing itself: a few lines that do could be drawn a billion times.
 */
export function buildTree(tree: Tree, prefix: string): Node {
  const builder: Builder = { prefix, ids: idsIn(tree), left: most.nodes, again: 0, pointed: 0 };
  return build(tree, builder, 0);
}

interface Builder {
  readonly prefix: string;
  readonly ids: ReadonlySet<string>;
  left: number;
  /** How many nodes may still be made within what is drawn again; 0 outside of it. */
  again: number;
  /** How many of the elements around point at something, which those within them inherit. */
  pointed: number;
}

function build(tree: Tree, builder: Builder, depth: number): Node {
  builder.left -= 1;
  if (typeof tree === "string") return document.createTextNode(tree);
  const [space, name, given, children] = tree;
  const tag = space === 0 && name === "figure" ? "div" : name;
  if (!tags[space]?.has(tag) || depth > most.depth || builder.left < 0)
    return document.createTextNode("");
  const element =
    space === 1 ? document.createElementNS(svgSpace, tag) : document.createElement(tag);
  const begins = builder.again === 0 && drawnAgain.has(tag);
  if (begins && builder.pointed > 0) return document.createTextNode("");
  if (begins) builder.again = most.drawnAgain;
  for (const [key, value] of Object.entries(given)) put(element, key, value, builder);
  const points = pointsSomewhere(element);
  if (points) builder.pointed += 1;
  for (const child of children) {
    if (builder.again === 1) break;
    if (builder.again > 1) builder.again -= 1;
    element.append(build(child, builder, depth + 1));
  }
  if (points) builder.pointed -= 1;
  if (begins) builder.again = 0;
  return element;
}

function pointsSomewhere(element: Element): boolean {
  return [...pointing].some((name) => element.getAttribute(name)?.startsWith("url(") ?? false);
}

function put(element: Element, key: string, value: string, builder: Builder): void {
  const { prefix, ids, again } = builder;
  if (key === "style") {
    putStyle(element, value);
    return;
  }
  if (!attributes.has(key)) return;
  if (key === "role" && !roles.has(value)) return;
  if (key === "id") element.setAttribute("id", prefix + value);
  else if (naming.has(key)) element.setAttribute(key, named(value, prefix, ids));
  else if (pointing.has(key) && value.includes("url")) {
    const part = /^url\(#([\w-]+)\)$/.exec(value.trim())?.[1];
    if (part !== undefined && ids.has(part) && again === 0)
      element.setAttribute(key, `url(#${prefix}${part})`);
  } else if (isText(key) || !unsafeValue.test(value)) element.setAttribute(key, value);
}

/** Attributes that are words for people may say anything. */
function isText(key: string): boolean {
  return key === "aria-label" || key === "title";
}

function named(value: string, prefix: string, ids: ReadonlySet<string>): string {
  return value
    .split(/\s+/)
    .filter((id) => ids.has(id))
    .map((id) => prefix + id)
    .join(" ");
}

function putStyle(element: Element, text: string): void {
  const { style } = element as HTMLElement;
  for (const declaration of text.split(";")) {
    const [property = "", ...rest] = declaration.split(":");
    const name = property.trim().toLowerCase();
    const value = rest.join(":").trim();
    if (styles.has(name) && !unsafeValue.test(value)) style.setProperty(name, value);
  }
}

function idsIn(tree: Tree, found = new Set<string>(), depth = 0): ReadonlySet<string> {
  if (typeof tree === "string" || depth > most.depth) return found;
  const { id } = tree[2];
  if (id !== undefined && /^[\w-]+$/.test(id)) found.add(id);
  for (const child of tree[3]) idsIn(child, found, depth + 1);
  return found;
}
