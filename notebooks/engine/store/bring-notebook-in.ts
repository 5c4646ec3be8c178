import type { CellId } from "../types/index.ts";
import { bringStatesIn, noteIfNew } from "./bring-states-in.ts";
import { documentKey, takenBy } from "./documents.ts";
import { freshFile } from "./file-names.ts";
import { readKey } from "./keys.ts";
import { movedRecord } from "./move.ts";
import { fileOfCell, isCarried, partsOfPlace } from "./place.ts";
import { plansKey } from "./plans.ts";
import type { EnteredRecord, KeptRecord, Plan, PlansRecord, StateContent } from "./record-types.ts";
import { readRecord } from "./records.ts";
import { sameContent } from "./states.ts";
import type { Step } from "./storage.ts";

/** All records of one notebook in a file of everything, by key. */
export interface NotebookRecords {
  readonly main: string;
  readonly records: ReadonlyMap<string, KeptRecord>;
}

export interface Report {
  /** ISO instant at which they are taken in. */
  readonly at: string;
  /** Names that are taken besides those kept. */
  readonly taken: readonly string[];
  /** A sentence for each thing that happened. */
  readonly said: string[];
}

/** Takes one notebook in beside what is kept; nothing of that is written over. */
export async function bringNotebookIn(
  step: Step,
  notebook: NotebookRecords,
  report: Report,
): Promise<void> {
  const { main } = notebook;
  const document = notebook.records.get(documentKey(main));
  if (document?.kind !== "document") return mergeIn(step, notebook, report);
  const taken = [...report.taken, ...takenBy(await step.keys())];
  for (const name of namesFrom(main, taken)) {
    if (!(await isThere(step, notebook, name))) continue;
    return mergeIn(step, movedNotebook(notebook, name), report);
  }
  const name = freshFile(main, taken);
  const moved = movedNotebook(notebook, name);
  for (const [key, record] of moved.records) await step.put(key, record);
  report.said.push(
    name === main
      ? `“${document.title}” (${name}) came in.`
      : `“${document.title}” came in as ${name}: there is another ${main} here, which stays as it is.`,
  );
}

/** The name and those with numbers after it under which it may be here already. */
function namesFrom(file: string, taken: readonly string[]): readonly string[] {
  const names: string[] = [];
  const end = freshFile(file, taken);
  for (let next = file; next !== end; next = freshFile(file, names)) names.push(next);
  return names;
}

function movedNotebook({ main, records }: NotebookRecords, name: string): NotebookRecords {
  if (name === main) return { main, records };
  const move = { from: main, to: name };
  return {
    main: name,
    records: new Map(
      [...records].flatMap(([key, record]) => {
        const moved = movedRecord(key, record, move);
        return moved ? [moved] : [];
      }),
    ),
  };
}

/** Whether the notebook is kept here under the name: the same text, and the same of all it carries. */
async function isThere(step: Step, notebook: NotebookRecords, name: string): Promise<boolean> {
  for (const [key, record] of movedNotebook(notebook, name).records) {
    if (record.kind !== "document") continue;
    const here = readRecord("document", await step.get(key));
    if (here.is !== "record" || here.record.text !== record.text) return false;
  }
  return true;
}

async function mergeIn(step: Step, notebook: NotebookRecords, report: Report): Promise<void> {
  const { main, records } = notebook;
  const here = (await step.get(documentKey(main))) !== undefined;
  await bringStatesIn(step, notebook, { report, isOnShelf: here });
  const apart = [...records.keys()].some((key) => isCarried(readKey(key)?.place ?? ""));
  const differing: EnteredRecord[] = [];
  for (const [key, record] of records) {
    if (record.kind !== "entered") continue;
    const before = await step.get(key);
    if (before === undefined) {
      await step.put(key, record);
      report.said.push(`What was entered in ${record.file} came in.`);
    } else if (!sameEntries(record, before)) differing.push(record);
  }
  if (differing.length > 0) {
    const kept = await noteIfNew(step, {
      ...contentOf(differing),
      main,
      apart,
      at: report.at,
      why: "from a file",
    });
    const files = differing.map(({ file }) => file).join(", ");
    if (kept !== "known")
      report.said.push(`What is entered in ${files} differs: yours stays; ${whereFor(kept, main)}`);
  }
  const plans = records.get(plansKey(main));
  if (plans?.kind === "plans") await bringPlansIn(step, plans, { report, apart });
}

const whereFor = (kept: "noted" | "refused", main: string) =>
  kept === "noted"
    ? `the file’s is among the earlier states of ${main}.`
    : `the file’s was left out, for the earlier states of ${main} can't be changed by this version.`;

function sameEntries(record: EnteredRecord, stored: unknown): boolean {
  const here = readRecord("entered", stored);
  if (here.is !== "record") return false;
  return sameEntered(contentOf([record]), contentOf([here.record]));
}

function sameEntered(a: StateContent, b: StateContent): boolean {
  const rest = { main: "", at: "", why: "from a file", apart: false } as const;
  return sameContent({ ...a, ...rest }, { ...b, ...rest });
}

function contentOf(records: readonly EnteredRecord[]): StateContent {
  const files = records.map(({ file }) => partsOfPlace(file).file);
  const entered = records.flatMap(({ file, cells }) =>
    Object.entries(cells).map(([name, value]) => [`${partsOfPlace(file).file}#${name}`, value]),
  );
  return { files, texts: {}, entered: Object.fromEntries(entered) };
}

async function bringPlansIn(
  step: Step,
  { main, plans }: PlansRecord,
  { report, apart }: { readonly report: Report; readonly apart: boolean },
): Promise<void> {
  const before = readRecord("plans", await step.get(plansKey(main)));
  const here = before.is === "record" ? before.record.plans : [];
  const unread = before.is === "newer" || before.is === "broken";
  const isNew = ({ name }: Plan) => !unread && !here.some((plan) => plan.name === name);
  const added = plans.filter(isNew);
  if (added.length > 0) {
    await step.put(plansKey(main), { kind: "plans", version: 1, main, plans: [...here, ...added] });
    report.said.push(`Plans of ${main} came in: ${added.map(({ name }) => name).join(", ")}.`);
  }
  for (const plan of plans) {
    const own = here.find(({ name }) => name === plan.name);
    if (isNew(plan) || (own && sameEntered(contentOfPlan(own), contentOfPlan(plan)))) continue;
    const state = {
      ...contentOfPlan(plan),
      main,
      apart,
      at: report.at,
      why: "from a file",
      plan: plan.name,
    } as const;
    const kept = await noteIfNew(step, state);
    if (kept !== "known")
      report.said.push(`The plan “${plan.name}” differs: yours stays; ${whereFor(kept, main)}`);
  }
}

function contentOfPlan({ entered }: Plan): StateContent {
  const files = new Set((Object.keys(entered) as CellId[]).map(fileOfCell));
  return { files: [...files], texts: {}, entered };
}
