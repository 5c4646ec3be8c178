import { el } from "./dom.ts";

/**
 * Says in words and by a broken edge that a table goes on to the side, as long as it does: what a
 * narrow screen hides would not be looked for otherwise.
 */
export function signAtSide(holder: HTMLElement): HTMLElement {
  const sign = el("p", { class: "aside-more" });
  const look = () => {
    // On paper nothing scrolls, and what changes while sheets are counted miscounts them.
    if (matchMedia("print").matches) return;
    const { scrollWidth, clientWidth, scrollLeft } = holder;
    const hidden = scrollWidth - clientWidth;
    const isRight = hidden - scrollLeft > 2;
    const isLeft = scrollLeft > 2;
    holder.dataset.more = [isLeft ? "left" : "", isRight ? "right" : ""].join(" ").trim();
    sign.hidden = hidden <= 2;
    // Only words that change are written: who reads along hears nothing twice.
    const words = isRight ? "The table goes on to the right →" : "← The table begins at the left";
    if (!sign.hidden && sign.textContent !== words) sign.textContent = words;
  };
  holder.addEventListener("scroll", look, { passive: true });
  const watch = new ResizeObserver(look);
  watch.observe(holder);
  const [table] = holder.children;
  if (table) watch.observe(table);
  sign.hidden = true;
  return sign;
}
