import MarkdownIt, { type Token } from "markdown-it";
import { el, idFrom } from "./dom.ts";
import { makeOutward } from "./outward-link.ts";

const markdown = new MarkdownIt("commonmark", { html: false }).enable(["table", "strikethrough"]);

/** What a document's links refer to, gathered over all its text. */
export type References = Record<string, unknown>;

/** Reads the definitions of links in a whole document, so that each piece of prose can use them. */
export function referencesOf(text: string): References {
  const references: References = {};
  markdown.parse(text, references);
  return references;
}

export interface ProseOptions {
  readonly references: References;
  /** Makes what stands in the sentence for a code span `fig NAME`. */
  figure(name: string): Node;
  /** The address of a link, or undefined where it leads nowhere we go. */
  link(address: string): string | undefined;
}

/**
 * Draws prose. Nodes are made from the reader's tokens through a list of tags, never from markup
 * text: a document from somebody else can hold no script, no style and no picture from elsewhere.
 */
export function prose(text: string, options: ProseOptions): readonly HTMLElement[] {
  const tokens = markdown.parse(text, { ...options.references });
  const root = el("div");
  draw(tokens, root, options);
  return [...root.children] as HTMLElement[];
}

const tags = new Set(
  (
    "h1 h2 h3 h4 h5 h6 p ul ol li blockquote em strong s a code pre hr br " +
    "table thead tbody tr th td"
  ).split(" "),
);

function draw(tokens: readonly Token[], root: Element, options: ProseOptions): void {
  let at = root;
  for (const token of tokens) {
    if (token.type === "inline") draw(token.children ?? [], at, options);
    else if (token.nesting === 1) at = open(token, at, options);
    else if (token.nesting === -1) at = closed(token, at);
    else put(token, at, options);
  }
}

function open(token: Token, at: Element, options: ProseOptions): Element {
  // The paragraphs of a tight list are there only for the reader of tokens.
  if (token.hidden || !tags.has(token.tag)) return at;
  const element = document.createElement(token.tag);
  if (token.tag === "a") setLink(element, String(token.attrGet("href") ?? ""), options);
  if (token.tag === "ol") setStart(element, token);
  if (/right/.test(String(token.attrGet("style") ?? ""))) element.className = "r";
  if (token.tag === "th") element.setAttribute("scope", "col");
  at.append(element);
  return element;
}

function closed(token: Token, at: Element): Element {
  if (token.hidden || !tags.has(token.tag)) return at;
  if (/^h[1-6]$/.test(token.tag)) at.id = idFrom(at.textContent.toLowerCase());
  return at.parentElement ?? at;
}

function put(token: Token, at: Element, options: ProseOptions): void {
  if (token.type === "text") at.append(token.content);
  else if (token.type === "softbreak") at.append(" ");
  else if (token.type === "hardbreak") at.append(el("br"));
  else if (token.type === "hr") at.append(el("hr"));
  else if (token.type === "code_inline") at.append(code(token.content, options));
  // A picture from elsewhere would tell its server who reads; its words are enough.
  else if (token.type === "image") at.append(token.content);
  else if (token.type === "fence" || token.type === "code_block")
    at.append(el("pre", { class: "listing", tabindex: 0 }, el("code", {}, token.content)));
}

function code(content: string, options: ProseOptions): Node {
  const [first, name, ...more] = content.trim().split(/\s+/);
  return first === "fig" && name !== undefined && more.length === 0
    ? options.figure(name)
    : el("code", {}, content);
}

function setLink(element: Element, address: string, options: ProseOptions): void {
  const to = options.link(address);
  if (to === undefined) return;
  if (/^https?:/i.test(to) && element instanceof HTMLElement) makeOutward(element, to);
  else element.setAttribute("href", to);
}

function setStart(element: Element, token: Token): void {
  const start = token.attrGet("start");
  if (start) element.setAttribute("start", String(start));
}

/** Where a link of a document leads: another notebook, a heading of this one, the open web. */
export function safeLink(address: string): string | undefined {
  if (/^https?:\/\//i.test(address)) return address;
  const notebook = /^(?:\.\/)?([\w.-]+\.md)(#.*)?$/.exec(address);
  if (notebook) return `?notebook=${encodeURIComponent(notebook[1] ?? "")}${notebook[2] ?? ""}`;
  return address.startsWith("#") ? address : undefined;
}
