import type { TableText } from "../types/index.ts";
import type {
  DocumentRecord,
  EnteredRecord,
  KindOfRecord,
  Plan,
  PlansRecord,
  SettingsRecord,
  StateRecord,
  StatesRecord,
} from "./record-types.ts";

const isText = (value: unknown): value is string => typeof value === "string";
const isCount = (value: unknown) => Number.isSafeInteger(value) && Number(value) >= 0;

/** Whether a value is a plain record, as what is kept by name is. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isTable(value: unknown): value is TableText {
  if (!isRecord(value)) return false;
  const { kind, name, columns, rows, decimal } = value;
  return (
    kind === "table" &&
    isText(name) &&
    (decimal === "." || decimal === ",") &&
    Array.isArray(columns) &&
    columns.every(isText) &&
    Array.isArray(rows) &&
    rows.every((row) => Array.isArray(row) && row.length === columns.length && row.every(isText))
  );
}

/** Whether this is what an entry or a table may hold. */
export function isEnteredValue(value: unknown): value is string | TableText {
  return isText(value) || isTable(value);
}

function isEntered(value: unknown): boolean {
  return isRecord(value) && Object.values(value).every(isEnteredValue);
}

function isEnteredById(value: unknown): boolean {
  return isRecord(value) && isEntered(value) && Object.keys(value).every((id) => id.includes("#"));
}

function isOrigin(value: unknown): boolean {
  if (!isRecord(value)) return false;
  if (value.from === "new") return true;
  if (value.from === "file") return isText(value.name);
  if (value.from === "link") return isText(value.key);
  return (
    value.from === "shipped" &&
    isText(value.file) &&
    (value.shippedVersion === undefined || isText(value.shippedVersion))
  );
}

function isPlan(value: unknown): value is Plan {
  if (!isRecord(value)) return false;
  return isText(value.name) && isText(value.made) && isEnteredById(value.entered);
}

function isListed(value: unknown): boolean {
  return isRecord(value) && isCount(value.number) && isText(value.at) && isText(value.why);
}

/** Whether a stored value of the newest version has the shape of its kind. */
export const shapes: Readonly<Record<KindOfRecord, (stored: object) => boolean>> = {
  entered(stored) {
    const { file, cells } = stored as Partial<EnteredRecord>;
    return isText(file) && isEntered(cells);
  },
  settings: (stored) => ["us", "metric"].includes(String((stored as SettingsRecord).units)),
  document(stored) {
    const { place, text, title, revision, changed, origin, ownGarden, writer } =
      stored as Partial<DocumentRecord>;
    return (
      [place, text, title, changed].every(isText) &&
      isCount(revision) &&
      isOrigin(origin) &&
      typeof ownGarden === "boolean" &&
      (writer === undefined || isText(writer))
    );
  },
  plans(stored) {
    const { main, plans } = stored as Partial<PlansRecord>;
    return (
      isText(main) &&
      Array.isArray(plans) &&
      plans.every(isPlan) &&
      new Set(plans.map(({ name }) => name)).size === plans.length
    );
  },
  state(stored) {
    const { main, number, at, why, apart, files, texts, entered, plan, whole } =
      stored as Partial<StateRecord>;
    return (
      [main, at, why].every(isText) &&
      isCount(number) &&
      typeof apart === "boolean" &&
      Array.isArray(files) &&
      files.every(isText) &&
      isRecord(texts) &&
      Object.values(texts).every(isText) &&
      isEnteredById(entered) &&
      (plan === undefined || isText(plan)) &&
      (whole === undefined || isRecord(whole))
    );
  },
  states(stored) {
    const { main, next, states, removed } = stored as Partial<StatesRecord>;
    return (
      isText(main) &&
      isCount(next) &&
      Array.isArray(states) &&
      states.every(isListed) &&
      (removed === undefined || (isText(removed.title) && isText(removed.at)))
    );
  },
};
