import { button, el } from "../dom.ts";

/** Says that a newer version of the workbook stands ready; the page keeps its own until asked. */
export function newerNotice(use: () => void): HTMLElement {
  const notice = el("div", { class: "newer", role: "status" });
  const leave = button("Later", () => notice.remove());
  notice.append(
    el("p", {}, "A newer version of the workbook is ready. What you typed stays."),
    el("span", { class: "acts" }, button("Use it", use, { class: "main" }), leave),
  );
  return notice;
}
