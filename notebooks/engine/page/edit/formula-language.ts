import { javascriptLanguage } from "@codemirror/lang-javascript";
import { LanguageSupport } from "@codemirror/language";
import type { Extension } from "@codemirror/state";

/** Formulas are read as they are typed, for lines that move in by themselves and names that are marked. */
export const formulaLanguage: Extension = new LanguageSupport(javascriptLanguage);
