import { wordsFor } from "../../document/seldom.ts";
import type { Notebook } from "../../types/index.ts";

/** A stretch of a document that is being written: the blocks it makes up now. */
export class StretchPlace {
  index: number;
  /** How many blocks it is: writing a fence into prose makes more of one. */
  span = 1;
  #text: string;
  #total: number;

  constructor(notebook: Notebook, index: number) {
    this.index = index;
    this.#total = notebook.blocks.length;
    this.#text = this.textIn(notebook);
  }

  textIn({ blocks }: Notebook): string {
    return blocks
      .slice(this.index, this.index + this.span)
      .map(({ text }) => text)
      .join("");
  }

  /** The document with another text in the stretch, which swallows nothing below it. */
  replaced(notebook: Notebook, text: string): string {
    const texts = (part: Notebook["blocks"]) => part.map((block) => block.text).join("");
    const below = texts(notebook.blocks.slice(this.index + this.span));
    const words = wordsFor(notebook, text, { isLast: below === "" });
    return texts(notebook.blocks.slice(0, this.index)) + words + below;
  }

  /** The stretch itself was written: whatever more or fewer blocks there are belong to it. */
  written(notebook: Notebook): void {
    this.span = Math.max(0, this.span + notebook.blocks.length - this.#total);
    this.#note(notebook);
  }

  /** The document changed elsewhere, or was put back; gives false where the stretch is gone. */
  follow(notebook: Notebook): boolean {
    const more = notebook.blocks.length - this.#total;
    const before = this.index;
    const found = this.#placesIn(notebook).sort(
      (a, b) => Math.abs(a - before) - Math.abs(b - before),
    );
    this.index = found[0] ?? before;
    if (found.length > 0) return this.#note(notebook);
    if (more === 0 && this.span > 0) return this.#note(notebook);
    // Undoing may have made one block again of what had become several.
    const span = this.span + more;
    if (span < 1 || before + span > notebook.blocks.length || this.span === 1) return false;
    this.span = span;
    return this.#note(notebook);
  }

  /** Where the same words stand, whatever blank lines are around them. */
  #placesIn(notebook: Notebook): number[] {
    const [, body] = bodyOf(this.#text);
    const last = notebook.blocks.length - this.span;
    return Array.from({ length: Math.max(0, last + 1) }, (_, at) => at).filter((at) => {
      const texts = notebook.blocks.slice(at, at + this.span).map(({ text }) => text);
      return bodyOf(texts.join(""))[1] === body;
    });
  }

  #note(notebook: Notebook): true {
    this.#total = notebook.blocks.length;
    this.#text = this.textIn(notebook);
    return true;
  }
}

/** A text in three: the blank lines before it, what stands in it, the blank lines and line end after it. */
export function bodyOf(text: string): readonly [before: string, body: string, after: string] {
  const [before = ""] = /^(?:[ \t]*\r?\n)*/.exec(text) ?? [];
  const rest = text.slice(before.length);
  const body = rest.trimEnd();
  return [before, body, rest.slice(body.length)];
}
