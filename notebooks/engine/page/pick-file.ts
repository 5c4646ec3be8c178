import { el } from "./dom.ts";

/** Lets the reader choose a text file; undefined where they chose none. */
export function pickFile(
  accept: string,
): Promise<{ readonly name: string; readonly text: string } | undefined> {
  return new Promise((resolve, reject) => {
    const input = el("input", { type: "file", accept, hidden: true });
    const end = () => input.remove();
    input.addEventListener("cancel", () => {
      end();
      resolve(undefined);
    });
    input.addEventListener("change", () => {
      const [file] = input.files ?? [];
      end();
      if (!file) return resolve(undefined);
      file.text().then((text) => resolve({ name: file.name, text }), reject);
    });
    document.body.append(input);
    input.click();
  });
}
