import type { Program } from "../compile/index.ts";
import type { Session } from "../run/index.ts";
import type { CellId, OutlineCell, ShownRemark } from "../types/index.ts";
import type { Job } from "./job.ts";

/** Remarks on how the notebook is written: of use to whoever wrote it, so not on a shipped one. */
export function notesOnDocument(
  program: Program,
  { main, shipped, format }: Job,
): readonly string[] {
  if (shipped || format !== "text") return [];
  return program.remarks
    .filter(({ file }) => file === main)
    .map(({ file, line, message }) => `Note: ${file}, line ${line}: ${message}`);
}

/**
 * What the cells asked for, and those they rest on, found worth knowing. Where a program reads what
 * is printed, only what concerns the tables it gave.
 */
export function notesOnTables(
  asked: readonly OutlineCell[],
  session: Session,
  { format, tables }: Job,
): readonly string[] {
  const byId = new Map(session.outline.map((cell) => [cell.id, cell]));
  const seen = new Set<CellId>(asked.map(({ id }) => id));
  for (const id of seen) for (const taken of byId.get(id)?.takes ?? []) seen.add(taken);
  return [...seen]
    .flatMap((id) => session.state(id)?.remarks ?? [])
    .filter(({ path: [name] }) => format === "text" || Object.hasOwn(tables, String(name)))
    .map(noteOn);
}

/** What was saved as typed into a cell that is no field any more: it counts for nothing. */
export function notesOnSaved(saved: readonly OutlineCell[], session: Session): readonly string[] {
  return saved
    .filter(({ id, what }) => {
      const state = session.state(id);
      return what === "cell" && state !== undefined && !state.entry && !state.error;
    })
    .map(
      ({ name, file }) =>
        `Note: what was entered for ${name} of ${file} is not used: it is no entry.`,
    );
}

function noteOn({ path, text }: ShownRemark): string {
  const place = path.map((step) => (typeof step === "number" ? `row ${step}` : step));
  return `Note: ${place.length === 0 ? "" : `${place.join(", ")}: `}${text}`;
}
