import type { CellId } from "../types/index.ts";
import { fileAt, nameOfCell, partsOfPlace, type Scope } from "./place.ts";
import type { EnteredValue, StateReason } from "./record-types.ts";
import { type NewState, noteStateIn, rewriteStateIn } from "./states.ts";
import type { Step } from "./storage.ts";
import { filesOf, storedContent } from "./stored-content.ts";

/** The open notebook: whose earlier states take what can't stand. */
export interface OpenPlace {
  readonly scope: Scope;
  readonly files: readonly string[];
}

export interface AstrayWhen {
  readonly at: string;
  readonly why: StateReason;
  /** The open notebook, where one is open. */
  readonly open?: OpenPlace | undefined;
}

/**
 * Puts a text that can't stand among the earlier states of its notebook. Given the number of a state
 * it went to before, that one is written again, so that typing on does not push out the others.
 */
export async function textAstray(
  step: Step,
  { place, text, state }: { place: string; text: string; state?: number | undefined },
  when: AstrayWhen,
): Promise<number | undefined> {
  const { file, scope, files } = await homeOf(step, place, when.open);
  const content = await storedContent(step, files, scope);
  const made: NewState = {
    ...content,
    main: scope.main,
    apart: scope.apart,
    at: when.at,
    why: when.why,
    texts: { ...content.texts, [file]: text },
  };
  return state === undefined ? noteStateIn(step, made) : rewriteStateIn(step, state, made);
}

/** Puts what entries of one place held, before they were written over, among the earlier states. */
export async function entriesAstray(
  step: Step,
  { place, held }: { place: string; held: ReadonlyMap<CellId, EnteredValue | undefined> },
  when: AstrayWhen,
): Promise<number | undefined> {
  const { file, scope, files } = await homeOf(step, place, when.open);
  const content = await storedContent(step, files, scope);
  const entered = new Map(Object.entries(content.entered) as [CellId, EnteredValue][]);
  for (const [id, value] of held) {
    const own: CellId = `${file}#${nameOfCell(id)}`;
    if (value === undefined) entered.delete(own);
    else entered.set(own, value);
  }
  const { main, apart } = scope;
  const { at, why } = when;
  return noteStateIn(step, {
    ...content,
    main,
    apart,
    at,
    why,
    entered: Object.fromEntries(entered) as Record<CellId, EnteredValue>,
  });
}

/** The notebook whose states a place belongs to: the open one where it has it, else its own. */
async function homeOf(step: Step, place: string, open: OpenPlace | undefined) {
  const file = open && fileAt(place, open.scope);
  if (open && file !== undefined && open.files.includes(file)) return { ...open, file };
  const { main, file: own } = partsOfPlace(place);
  return {
    file: own,
    scope: { main, apart: true },
    files: await filesOf(step, main),
  };
}
