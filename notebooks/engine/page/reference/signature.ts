/** How many characters fit on a line before a signature is broken. */
const widest = 58;

/** A signature over as many lines as it needs to be read: what is handed in, one a line. */
export function signatureLines(signature: string): readonly string[] {
  if (signature.length <= widest) return [signature];
  const open = signature.indexOf("(");
  const close = open < 0 ? -1 : closing(signature, open);
  if (close < 0) return [signature];
  const inside = partsOf(signature.slice(open + 1, close));
  return [
    signature.slice(0, open + 1),
    ...inside.map((part) => `  ${part},`),
    signature.slice(close),
  ];
}

/** Where the bracket that opens at `open` is closed; -1 where it is not. */
function closing(text: string, open: number): number {
  let depth = 0;
  for (let at = open; at < text.length; at += 1) {
    if (opens(text, at)) depth += 1;
    if (closes(text, at)) depth -= 1;
    if (depth === 0) return at;
  }
  return -1;
}

/** What stands between commas that are in no brackets of their own. */
function partsOf(text: string): readonly string[] {
  const parts: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (opens(text, at)) depth += 1;
    if (closes(text, at)) depth -= 1;
    if (text[at] !== "," || depth > 0) continue;
    parts.push(text.slice(from, at));
    from = at + 1;
  }
  return [...parts, text.slice(from)].map((part) => part.trim()).filter((part) => part !== "");
}

const opens = (text: string, at: number) => "([{<".includes(text[at] ?? " ");

/** The arrow of a function's type closes nothing. */
const closes = (text: string, at: number) =>
  ")]}>".includes(text[at] ?? " ") && !(text[at] === ">" && text[at - 1] === "=");
