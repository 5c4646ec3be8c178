import { button, el, freshId } from "./dom.ts";

export interface PaneOptions {
  readonly title: string;
  readonly content: readonly Node[];
  /** A class of its own, for its style. */
  readonly className?: string;
  closed?(): void;
}

/**
 * Opens a sheet over the page for something done now and then: Escape or its button closes it, focus
 * stays inside while it is open and goes back to where it was.
 */
export function openPane({ title, content, className = "", closed }: PaneOptions): {
  readonly element: HTMLDialogElement;
  close(): void;
} {
  const before = document.activeElement;
  const heading = freshId("pane");
  const close = button("Close", () => element.close(), { class: "close" });
  const element = el(
    "dialog",
    { class: `pane ${className}`.trim(), "aria-labelledby": heading },
    el("header", { role: "none" }, el("h2", { id: heading, tabindex: -1 }, title), close),
    ...content,
  );
  element.addEventListener("close", () => {
    element.remove();
    // What closed it may have gone on to something else.
    const isNowhere = document.activeElement === document.body;
    if (isNowhere && before instanceof HTMLElement && before.isConnected) before.focus();
    closed?.();
  });
  document.body.append(element);
  element.showModal();
  return { element, close: () => element.close() };
}
