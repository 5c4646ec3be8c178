import type { Context } from "../context.ts";
import { button, el, freshId } from "../dom.ts";
import { openPane } from "../pane.ts";
import { heldInWords } from "./in-words.ts";
import { type SharedLink, shareLink } from "./link-of.ts";
import { saveOnePage } from "./one-page.ts";
import { mostScanned, qrDrawing } from "./qr.ts";
import { showLarge } from "./show-large.ts";

/** Opens the sheet from which a notebook is handed to others. */
export function openSharePane(context: Context): void {
  const { title } = context.book.main;
  const link = shareLink(context);
  const pane = openPane({
    title: `Share “${title}”`,
    className: "share",
    content: [
      ...(link.ok ? linkParts(link, context) : [el("p", { class: "nolink" }, link.words)]),
      el("h3", {}, "As a file"),
      choice("Save as a file", {
        hint: "A notebook with all it uses and all you entered: it can be opened here, and changed.",
        act: () => {
          pane.close();
          context.saveAsFile();
        },
      }),
      choice("Save as one page (HTML)", {
        hint: "To read, send or print: today’s answers, with no script in it. It cannot be changed.",
        act: () => void savePage(context),
      }),
    ],
  });
}

async function savePage(context: Context): Promise<void> {
  try {
    await saveOnePage(context);
    context.say("The page is saved.");
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    context.say(`The page could not be saved: ${why}`);
  }
}

type GoodLink = Extract<SharedLink, { readonly ok: true }>;

function linkParts({ address, record }: GoodLink, context: Context): HTMLElement[] {
  const { title } = context.book.main;
  const field = el("input", { type: "text", readonly: true, value: address, id: freshId("link") });
  const said = el("p", { class: "hint", role: "status" });
  field.addEventListener("focus", () => field.select());
  const copy = button("Copy the link", () => void copyLink(field, said), { class: "main" });
  // Whoever closes the system's sheet without choosing has not been failed.
  const send =
    typeof navigator.share === "function" &&
    button("Send it …", () => void navigator.share({ title, url: address }).catch(() => undefined));
  const letters = address.length.toLocaleString("en");
  return [
    el("h3", {}, "As a link"),
    ...heldInWords(record, context),
    el(
      "div",
      { class: "linkrow" },
      el("label", { for: field.id }, "The link"),
      el("span", { class: "letters" }, `${letters} letters`),
      field,
    ),
    el("p", { class: "acts" }, copy, send),
    said,
    el(
      "p",
      { class: "hint" },
      "All of it stands after the “#”, which browsers do not send: no server sees it. " +
        "Opening it changes nothing that the other person keeps.",
    ),
    ...codeParts(address, title),
  ];
}

function codeParts(address: string, title: string): HTMLElement[] {
  if (address.length > mostScanned)
    return [
      el("h3", {}, "As a code to scan"),
      el(
        "p",
        {},
        `The link has ${address.length.toLocaleString("en")} letters. Over ${mostScanned} a code gets so fine ` +
          "that a phone across a room cannot read it. Send the link, or the file below.",
      ),
    ];
  return [
    el("h3", {}, "As a code to scan"),
    el(
      "div",
      { class: "coderow" },
      qrHolder(address, title),
      button("Show it large", () => showLarge(address, title)),
    ),
  ];
}

function qrHolder(address: string, title: string): HTMLElement {
  const holder = el("div", { class: "qrsheet" });
  holder.append(qrDrawing(address, `A code that opens “${title}”`));
  return holder;
}

async function copyLink(field: HTMLInputElement, said: HTMLElement): Promise<void> {
  try {
    await navigator.clipboard.writeText(field.value);
    said.textContent = "The link is copied.";
  } catch {
    field.focus();
    field.select();
    said.textContent = "The browser did not let it be copied. It is marked: copy it by hand.";
  }
}

function choice(words: string, { hint, act }: { readonly hint: string; act(): void }): HTMLElement {
  return el("div", { class: "choice" }, button(words, act), el("p", { class: "hint" }, hint));
}
