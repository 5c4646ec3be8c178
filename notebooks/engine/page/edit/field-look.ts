import type { Extension } from "@codemirror/state";
import { EditorView } from "@codemirror/view";

/** How a field looks, from the page's tokens. Nothing is coloured: names of cells are underlined. */
export function fieldLook(isProse: boolean): Extension {
  const face = isProse
    ? { fontFamily: "var(--prose)", fontSize: "1.0625rem", lineHeight: "1.6875rem" }
    : { fontFamily: "var(--code)", fontSize: "0.9375rem", lineHeight: "1.6rem", fontWeight: "500" };
  return EditorView.theme({
    "&": { color: "var(--ink)", backgroundColor: "transparent" },
    "&.cm-focused": { outline: "none" },
    ".cm-scroller": face,
    ".cm-content": { padding: "0.6rem 0", caretColor: "var(--ink)" },
    ".cm-line": { padding: "0 0.75rem" },
    ".cm-gutters": {
      backgroundColor: "transparent",
      border: "0",
      color: "var(--ink2)",
      fontWeight: "400",
    },
    ".cm-lineNumbers .cm-gutterElement": { padding: "0 0.35rem 0 0.75rem", minWidth: "3.2ch" },
    ".bw-name": { textDecoration: "underline 1px", textUnderlineOffset: "0.25em" },
    ".bw-wrong": {
      textDecoration: "underline wavy 1.5px var(--lead)",
      textUnderlineOffset: "0.25em",
    },
    ".cm-tooltip": {
      backgroundColor: "var(--sheet)",
      color: "var(--ink)",
      border: "1.5px solid var(--ink)",
      maxWidth: "min(34rem, 94vw)",
    },
    ".cm-tooltip.cm-tooltip-autocomplete > ul": {
      fontFamily: "var(--figure)",
      maxHeight: "min(26rem, 80vh)",
      maxWidth: "min(34rem, 92vw)",
    },
    ".cm-tooltip.cm-tooltip-autocomplete > ul > li": {
      padding: "0.3rem 0.75rem",
      fontSize: "0.9375rem",
      lineHeight: "1.375rem",
      display: "flex",
      flexWrap: "wrap",
      gap: "0 0.75rem",
      alignItems: "baseline",
      whiteSpace: "normal",
    },
    ".cm-tooltip.cm-tooltip-autocomplete > ul > li[aria-selected]": {
      backgroundColor: "var(--well)",
      color: "var(--ink)",
      boxShadow: "inset 3px 0 0 var(--ink)",
    },
    ".cm-completionLabel": { fontFamily: "var(--code)", fontWeight: "500" },
    ".cm-completionMatchedText": { textDecoration: "none", fontWeight: "700" },
    ".cm-completionDetail": {
      marginLeft: "auto",
      fontStyle: "normal",
      fontVariantNumeric: "lining-nums tabular-nums",
    },
    ".bw-help": {
      flexBasis: "100%",
      color: "var(--ink2)",
      display: "none",
    },
    "li[aria-selected] .bw-help": { display: "block" },
    "@media (pointer: coarse)": {
      ".cm-tooltip.cm-tooltip-autocomplete > ul > li": { minHeight: "2.75rem" },
    },
    "@media (forced-colors: active)": {
      ".cm-tooltip.cm-tooltip-autocomplete > ul > li[aria-selected]": {
        forcedColorAdjust: "none",
        backgroundColor: "SelectedItem",
        color: "SelectedItemText",
      },
    },
  });
}
