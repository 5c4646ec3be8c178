import type { LeftOut } from "./apply.ts";

/**
 * A document's text with what a link held and could not be put in, as plain text at its end: so it is
 * kept, and can be taken from there by hand.
 */
export function withLeftOut(text: string, left: readonly LeftOut[]): string {
  if (left.length === 0) return text;
  const lines = left.flatMap(({ id, title, what, why }) => [
    `${oneLine(title)} (${oneLine(id)}): ${why}`,
    ...what.split(/\r\n|\r|\n/).map((line) => `  ${line}`),
    "",
  ]);
  const fence = fenceFor(lines);
  const end = text === "" || text.endsWith("\n") ? "" : "\n";
  return [
    `${text}${end}`,
    "## Came with the link and did not fit\n",
    "Nothing of this is used. Take from it by hand what you need, then remove it.\n",
    `${fence} text`,
    ...lines.slice(0, -1),
    `${fence}\n`,
  ].join("\n");
}

const oneLine = (text: string) => text.replace(/\s+/g, " ");

/** A fence that no line closes, whatever a stranger wrote in it. */
function fenceFor(lines: readonly string[]): string {
  const longest = lines
    .flatMap((line) => line.match(/`+/g) ?? [])
    .reduce((most, marks) => Math.max(most, marks.length), 2);
  return "`".repeat(longest + 1);
}
