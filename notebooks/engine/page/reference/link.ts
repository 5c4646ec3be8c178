import type { Context } from "../context.ts";
import { el } from "../dom.ts";

/** A link to what the reference says of a name: it opens beside the notebook. */
export function functionLink(name: string, context: Context): HTMLAnchorElement {
  const link = el("a", { href: `?reference=${encodeURIComponent(name)}`, class: "fnlink" }, name);
  link.addEventListener("click", (event) => {
    if (event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
    event.preventDefault();
    openPane(name, context);
  });
  return link;
}

/** Opens the reference in a sheet over the notebook; its code comes when it is first asked for. */
export function openPane(name: string | undefined, context: Context): void {
  import("./pane.ts").then(
    ({ referencePane }) => referencePane(context, name),
    () => context.say("The reference could not be fetched. Try again when you are online."),
  );
}
