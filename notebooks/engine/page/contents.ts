import { el, setAttribute } from "./dom.ts";

/** The list of a notebook's sections; it follows the reading until it is ended. */
export interface Contents {
  readonly element: HTMLElement;
  end(): void;
}

export function contents(headings: readonly HTMLElement[]): Contents {
  const links = headings.map((heading) =>
    el("a", { href: `#${heading.id}` }, (heading.textContent ?? "").trim()),
  );
  const list = el("ol", {}, ...links.map((link) => el("li", {}, link)));
  const few = headings.length < 2;
  const element = el("nav", { class: "contents", "aria-label": "On this page", hidden: few }, list);
  return { element, end: follow(headings, links, list) };
}

function follow(
  headings: readonly HTMLElement[],
  links: readonly HTMLAnchorElement[],
  list: HTMLElement,
): () => void {
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
  return () => {
    removeEventListener("scroll", soon);
    removeEventListener("resize", soon);
  };
}
