import { strToU8 } from "fflate";
import type { TableText } from "../types/index.ts";
import { checksum } from "./checksum.ts";

/** What tells one state of a notebook's text from another: eight hexadecimal digits. */
export function versionOf(text: string): string {
  return checksum(strToU8(text)).toString(16).padStart(8, "0");
}

/** The same for the rows a table has in its document. */
export function versionOfTable({ columns, rows, decimal }: TableText): string {
  return versionOf(JSON.stringify([columns, rows, decimal]));
}
