import type { Storage } from "../../store/index.ts";
import type { CellId } from "../../types/index.ts";

/** How the reader likes to see the plans of a notebook: kept between visits, worth nothing else. */
export interface Remembered {
  /** Rows added to the pinned answers. */
  readonly rows: readonly CellId[];
  /** Plans shown, in their order; undefined until the reader chose. */
  readonly shown?: readonly string[];
  readonly allRows: boolean;
  /** Tables that every plan takes as they are now. */
  readonly shared: readonly CellId[];
  /** The answer that is drawn. */
  readonly drawn?: CellId;
  /** The answer whose entries are varied, and the ranges the reader gave. */
  readonly answer?: CellId;
  readonly ranges: Readonly<Record<CellId, Range>>;
}

export interface Range {
  readonly low?: string;
  readonly high?: string;
}

const nothing: Remembered = { rows: [], allRows: false, shared: [], ranges: {} };
const keyOf = (main: string) => `plansheet:${main}`;

export async function loadRemembered(storage: Storage, main: string): Promise<Remembered> {
  try {
    return read(await storage.get(keyOf(main))) ?? nothing;
  } catch {
    // How a sheet was left is no loss worth a word.
    return nothing;
  }
}

export async function remember(
  storage: Storage,
  main: string,
  changes: Partial<Remembered>,
): Promise<void> {
  await storage
    .change(keyOf(main), (before) => {
      if (isNewer(before)) return undefined;
      return { ...(read(before) ?? nothing), ...changes, kind: "plansheet", version: 1, main };
    })
    // How a sheet was left is no loss worth a word.
    .catch(() => undefined);
}

function isNewer(stored: unknown): boolean {
  const { version } = (stored ?? {}) as { readonly version?: unknown };
  return typeof version === "number" && version > 1;
}

function read(stored: unknown): Remembered | undefined {
  if (typeof stored !== "object" || stored === null || isNewer(stored)) return undefined;
  const { rows, shown, allRows, shared, drawn, answer, ranges } = stored as Partial<Remembered>;
  return {
    rows: textsIn(rows) as CellId[],
    shared: textsIn(shared) as CellId[],
    allRows: allRows === true,
    ...(Array.isArray(shown) ? { shown: textsIn(shown) } : {}),
    ...(typeof drawn === "string" ? { drawn } : {}),
    ...(typeof answer === "string" ? { answer } : {}),
    ranges: rangesIn(ranges),
  };
}

function textsIn(value: unknown): string[] {
  return Array.isArray(value) ? value.filter((one) => typeof one === "string") : [];
}

function rangesIn(value: unknown): Remembered["ranges"] {
  if (typeof value !== "object" || value === null) return {};
  const pairs = Object.entries(value).map(([id, range]) => {
    const { low, high } = (range ?? {}) as Record<string, unknown>;
    const kept = {
      ...(typeof low === "string" ? { low } : {}),
      ...(typeof high === "string" ? { high } : {}),
    };
    return [id, kept] as const;
  });
  return Object.fromEntries(pairs);
}
