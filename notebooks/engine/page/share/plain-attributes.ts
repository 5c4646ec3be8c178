/** What an element of the one page may keep; a drawing's own attributes apart. */
const kept = new Set(
  (
    "class id lang dir href colspan rowspan scope start reversed open role aria-label " +
    "aria-labelledby aria-describedby aria-hidden data-kind data-view"
  ).split(" "),
);

const svgSpace = "http://www.w3.org/2000/svg";

/** Takes away whatever could run, load or lead elsewhere, and what only a script had use for. */
export function onlyPlainAttributes(element: Element): void {
  const isDrawing = element.namespaceURI === svgSpace;
  for (const { name, value } of [...element.attributes]) {
    const stays = isDrawing ? isPlain(name, value) : kept.has(name) || scrolls(name, value);
    if (!stays) element.removeAttribute(name);
  }
}

/** A region that scrolls by itself is reached by the keyboard. */
function scrolls(name: string, value: string): boolean {
  return name === "tabindex" && value === "0";
}

function isPlain(name: string, value: string): boolean {
  if (/^on/i.test(name) || name === "tabindex") return false;
  if (/href$/i.test(name)) return value.startsWith("#");
  return !/url\(\s*["']?(?!#)/i.test(value) && !/^\s*(javascript|data):/i.test(value);
}
