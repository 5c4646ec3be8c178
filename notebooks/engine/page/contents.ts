import { el, setAttribute } from "./dom.ts";

/** The list of a notebook's sections; it follows the reading. */
export function contents(headings: readonly HTMLElement[]): HTMLElement | undefined {
  if (headings.length < 2) return undefined;
  const links = headings.map((heading) =>
    el("a", { href: `#${heading.id}` }, (heading.textContent ?? "").trim()),
  );
  const list = el("ol", {}, ...links.map((link) => el("li", {}, link)));
  const nav = el("nav", { class: "contents", "aria-label": "On this page" }, list);
  follow(headings, links, list);
  return nav;
}

function follow(
  headings: readonly HTMLElement[],
  links: readonly HTMLAnchorElement[],
  list: HTMLElement,
): void {
  let waiting = false;
  const mark = () => {
    waiting = false;
    const line = innerHeight / 4;
    let at = 0;
    headings.forEach((heading, index) => {
      if (heading.getBoundingClientRect().top <= line) at = index;
    });
    links.forEach((link, index) => {
      setAttribute(link, "aria-current", index === at && "true");
    });
    const link = links[at];
    if (link && list.scrollWidth > list.clientWidth)
      list.scrollLeft = link.offsetLeft - list.offsetLeft - 16;
  };
  const soon = () => {
    if (!waiting) requestAnimationFrame(mark);
    waiting = true;
  };
  addEventListener("scroll", soon, { passive: true });
  addEventListener("resize", soon, { passive: true });
  soon();
}
