/**
 * A name for a file that may stand in keys and addresses, from whatever a person or a disk calls it:
 * letters, digits, `-`, `_` and `.` stay, anything else becomes `-`; it ends in `.md`.
 */
export function safeFile(name: string): string {
  const base = name
    .normalize("NFC")
    .replace(/\.(md|markdown|txt)$/i, "")
    .replace(/[^\p{L}\p{N}._-]+/gu, "-")
    .replace(/^[-.]+|[-.]+$/g, "")
    .slice(0, 80);
  return `${base === "" ? "notebook" : base}.md`;
}

/** The name, or the first of `plot-2.md`, `plot-3.md`, … that is not taken. Case does not tell two apart. */
export function freshFile(file: string, taken: Iterable<string>): string {
  const names = new Set([...taken].map((name) => name.toLowerCase()));
  if (!names.has(file.toLowerCase())) return file;
  const base = file.replace(/\.md$/, "");
  const stem = base.replace(/-\d+$/, "");
  for (let number = 2; ; number += 1) {
    const next = `${stem}-${number}.md`;
    if (!names.has(next.toLowerCase())) return next;
  }
}
