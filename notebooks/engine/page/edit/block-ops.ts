import type { Block, Hints, Notebook } from "../../types/index.ts";

const text = (blocks: readonly { readonly text: string }[]) => blocks.map((b) => b.text).join("");

export function withHints({ blocks }: Notebook, index: number, hints: Partial<Hints>): string {
  return text(
    blocks.map((block, at) => {
      if (at !== index || (block.kind !== "cell" && block.kind !== "table")) return block;
      const [first = "", ...rest] = block.text.split("\n");
      const now = { ...block.hints, ...hints };
      const head = first.slice(0, first.indexOf(block.name) + block.name.length);
      const words = (["pinned", "quiet", "folded"] as const).filter((word) => now[word]);
      return { text: [[head, ...words, `"${now.title}"`].join(" "), ...rest].join("\n") };
    }),
  );
}

export function withBlockAdded(
  { blocks }: Notebook,
  at: number,
  kind: Block["kind"],
  { name = "", content = "" }: { name?: string; title?: string; content?: string },
): string {
  const fence = kind === "table" ? `csv table ${name}` : `js cell ${name}`;
  const body = kind === "prose" ? `${content}\n` : `\`\`\`${fence}\n${content.trimEnd()}\n\`\`\`\n`;
  return joined([...blocks.slice(0, at), { text: body }, ...blocks.slice(at)]);
}

export function withBlockMoved({ blocks }: Notebook, from: number, to: number): string {
  const others: { readonly text: string }[] = blocks.filter((_, at) => at !== from);
  return joined(others.toSpliced(to, 0, ...blocks.slice(from, from + 1)));
}

export function withBlockRemoved({ blocks }: Notebook, index: number): string {
  return joined(blocks.filter((_, at) => at !== index));
}

export function withBlockDuplicated({ blocks }: Notebook, index: number): string {
  const block = blocks[index];
  if (block?.kind !== "cell" && block?.kind !== "table") return text(blocks);
  const names = new Set(blocks.map((one) => ("name" in one ? one.name : "")));
  let name = block.name;
  for (let count = 2; names.has(name); count += 1) name = `${block.name}${count}`;
  const copy = { text: block.text.replace(block.name, name) };
  return joined([...blocks.slice(0, index + 1), copy, ...blocks.slice(index + 1)]);
}

/** Blocks with a blank line between them. */
function joined(blocks: readonly { readonly text: string }[]): string {
  return blocks.reduce((before, { text: next }) => {
    if (before === "" || next.startsWith("\n") || before.endsWith("\n\n")) return before + next;
    return `${before}${before.endsWith("\n") ? "" : "\n"}\n${next}`;
  }, "");
}
