import type { CellId } from "../types/index.ts";

/**
 * Whose entries and texts an open notebook has. A notebook that carries the documents it uses keeps
 * them `apart` from the reader's own garden.
 */
export interface Scope {
  /** The file of the notebook that is open. */
  readonly main: string;
  readonly apart: boolean;
}

const mark = ">";

/** Where a file's entries and text are kept: `garden.md`, or `plot.md>garden.md` where kept apart. */
export function placeOf(file: string, { main, apart }: Scope): string {
  return file === main || !apart ? file : `${main}${mark}${file}`;
}

/** The file that a place stands for in an open notebook; undefined where it is not one of its own. */
export function fileAt(place: string, scope: Scope): string | undefined {
  const { file } = partsOfPlace(place);
  return placeOf(file, scope) === place ? file : undefined;
}

/** The notebook a place belongs to, and the file it holds; the same where nothing is carried. */
export function partsOfPlace(place: string): { readonly main: string; readonly file: string } {
  const at = place.indexOf(mark);
  return at < 0
    ? { main: place, file: place }
    : { main: place.slice(0, at), file: place.slice(at + mark.length) };
}

/** Whether a place is one of a document that a notebook carries. */
export function isCarried(place: string): boolean {
  return place.includes(mark);
}

/** The same place in a notebook under another name. */
export function movedPlace(place: string, { from, to }: { from: string; to: string }): string {
  const { main, file } = partsOfPlace(place);
  if (main !== from) return place;
  return isCarried(place) ? `${to}${mark}${file}` : to;
}

export function fileOfCell(id: CellId): string {
  return id.slice(0, id.indexOf("#"));
}

export function nameOfCell(id: CellId): string {
  return id.slice(id.indexOf("#") + 1);
}

/** A cell's id with its place instead of its file. */
export function placedCell(id: CellId, scope: Scope): CellId {
  return `${placeOf(fileOfCell(id), scope)}#${nameOfCell(id)}`;
}
