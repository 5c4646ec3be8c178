import MarkdownIt from "markdown-it";

/** Raw HTML is text to us, as it is to the page that shows the prose. */
const markdown = new MarkdownIt("commonmark", { html: false });

/** A fenced block as CommonMark sees it. Lines are counted from 0, `to` is exclusive. */
export interface Fence {
  readonly info: string;
  readonly content: string;
  readonly from: number;
  readonly to: number;
  /** Inside a list item or a quotation. */
  readonly nested: boolean;
}

export interface CodeSpan {
  readonly content: string;
  readonly line: number;
}

export interface Outline {
  readonly fences: readonly Fence[];
  readonly spans: readonly CodeSpan[];
  readonly title: string | undefined;
  /** The lines of the heading the title is in, from 0, `to` exclusive. */
  readonly titleLines: readonly [from: number, to: number] | undefined;
}

type Token = ReturnType<typeof markdown.parse>[number];

export function outlineOf(text: string): Outline {
  const fences: Fence[] = [];
  const spans: CodeSpan[] = [];
  let title: string | undefined;
  let titleLines: readonly [from: number, to: number] | undefined;
  let heading = "";
  let headingLines: readonly [from: number, to: number] | undefined;
  for (const token of markdown.parse(text, {})) {
    if (token.type === "heading_open") {
      heading = token.tag;
      headingLines = token.map ?? undefined;
    }
    if (token.type === "heading_close") heading = "";
    if (token.type === "inline") {
      const words = heading === "h1" && title === undefined ? plainText(token) : undefined;
      if (words !== undefined) {
        title = words;
        titleLines = headingLines;
      }
      spans.push(...codeSpans(token));
    }
    const [from, to] = token.map ?? [0, 0];
    if (token.type !== "fence") continue;
    const info = markdown.utils.unescapeAll(token.info);
    fences.push({ info, content: token.content, from, to, nested: token.level > 0 });
  }
  return { fences, spans, title, titleLines };
}

function codeSpans(inline: Token): CodeSpan[] {
  const spans: CodeSpan[] = [];
  let line = inline.map?.[0] ?? 0;
  for (const child of inline.children ?? []) {
    if (child.type === "softbreak" || child.type === "hardbreak") line += 1;
    if (child.type === "code_inline") spans.push({ content: child.content, line });
  }
  return spans;
}

function plainText(inline: Token): string | undefined {
  const text = (inline.children ?? [])
    .map((child) =>
      child.type === "softbreak" || child.type === "hardbreak" ? " " : child.content,
    )
    .join("")
    .trim();
  return text === "" ? undefined : text;
}
