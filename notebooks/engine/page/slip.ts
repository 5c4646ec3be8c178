import type { OutlineCell } from "../types/index.ts";
import type { Context } from "./context.ts";
import { dependsOf } from "./depends/acts.ts";
import { button, el } from "./dom.ts";
import { linksTo } from "./links.ts";
import { functionLink } from "./reference/link.ts";

/** An opened cell: its name, its formula with the document's line numbers, what it takes and gives. */
export function slipView(outline: OutlineCell, context: Context): HTMLElement {
  const { name, file, line, formula, takes, gives, hints, what } = outline;
  const first = what === "table" ? line + 1 : firstLine(outline, context);
  const lines = formula.split("\n");
  const own = file === context.book.main.file ? "" : `${file}, `;
  const where = `${own}line ${first}${lines.length > 1 ? ` to ${first + lines.length - 1}` : ""}`;
  const names = new Set([...takes].map((id) => id.slice(id.indexOf("#") + 1)));
  return el(
    "div",
    { class: "slip" },
    el(
      "div",
      { class: "sliphead" },
      el("span", { class: "cname" }, name),
      el(
        "span",
        { class: "hints" },
        [hints.pinned ? "pinned" : "", hints.quiet ? "quiet" : "", where]
          .filter(Boolean)
          .join(" · "),
      ),
    ),
    el(
      "div",
      { class: "slipbody" },
      el(
        "pre",
        { class: "pad", tabindex: 0, "aria-label": `Formula of ${name}` },
        ...lines.flatMap((text, index) => [
          el("span", { class: "ln", "aria-hidden": "true" }, String(first + index)),
          ...underlined(text, names),
          index < lines.length - 1 ? "\n" : "",
        ]),
      ),
      el(
        "div",
        { class: "names" },
        ...(takes.length > 0 ? [el("p", {}, "Takes"), ...linksTo(takes, context)] : []),
        ...(gives.length > 0 ? [el("p", {}, "Gives to"), ...linksTo(gives, context)] : []),
        ...lookUps(outline, context).flatMap(({ term, inside }) => [
          el("p", {}, term),
          el("div", {}, ...inside),
        ]),
      ),
    ),
  );
}

function firstLine({ id, line }: OutlineCell, { book }: Context): number {
  const block = book.block(id);
  return block?.kind === "cell" ? block.formulaLine : line + 1;
}

/** What an opened cell leads to: its functions in the reference, a picture of what feeds it. */
export function lookUps(
  { id, functions }: OutlineCell,
  context: Context,
): readonly { readonly term: string; readonly inside: readonly (Node | string)[] }[] {
  const links = functions.map(({ name }) => functionLink(name, context));
  const named = links.flatMap((link, at) => (at === 0 ? [link] : [", ", link]));
  const picture = button("What feeds this", () => dependsOf(context, id), { class: "lnk" });
  return [
    ...(named.length === 0 ? [] : [{ term: "Functions it calls", inside: named }]),
    { term: "As a picture", inside: [picture] },
  ];
}

/** Names of other cells are underlined; nothing else is marked. */
function underlined(text: string, names: ReadonlySet<string>): (Node | string)[] {
  return text
    .split(/([\p{L}_$][\p{L}\p{N}_$]*)/u)
    .map((part) => (names.has(part) ? el("u", {}, part) : part));
}
