import { button, el } from "../dom.ts";
import { qrDrawing } from "./qr.ts";

/** The code over the whole screen, black on white, for a room to scan. */
export function showLarge(address: string, title: string): void {
  const close = button("Close", () => element.close(), { class: "close" });
  const element = el(
    "dialog",
    { class: "qrlarge", "aria-label": `Code to scan: ${title}` },
    qrDrawing(address, `A code that opens “${title}”`),
    el("p", {}, title),
    close,
  );
  element.addEventListener("close", () => {
    element.remove();
    if (document.fullscreenElement) void document.exitFullscreen();
  });
  document.body.append(element);
  element.showModal();
  // Where the browser refuses, the window is all there is; the code fills that.
  document.documentElement.requestFullscreen?.().catch(() => undefined);
}
