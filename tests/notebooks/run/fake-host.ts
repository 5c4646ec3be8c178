import { compileNotebook } from "../../../notebooks/engine/compile/index.ts";
import { documentsOf } from "../../../notebooks/engine/document/index.ts";
import {
  createSession,
  type Session,
  type SessionOptions,
} from "../../../notebooks/engine/run/index.ts";
import type {
  CellId,
  CellState,
  Entry,
  Host,
  LongWork,
  Operators,
  TableText,
} from "../../../notebooks/engine/types/index.ts";

/** Plain JavaScript under every operator, enough where no quantity is. */
const operators: Operators = {
  plus: (a, b) => (a as number) + (b as number),
  minus: (a, b) => Number(a) - Number(b),
  times: (a, b) => Number(a) * Number(b),
  over: (a, b) => Number(a) / Number(b),
  remainder: (a, b) => Number(a) % Number(b),
  power: (a, b) => Number(a) ** Number(b),
  negative: (a) => -Number(a),
  less: (a, b) => Number(a) < Number(b),
  atMost: (a, b) => Number(a) <= Number(b),
  more: (a, b) => Number(a) > Number(b),
  atLeast: (a, b) => Number(a) >= Number(b),
  same: (a, b) => a === b,
};

/** A span: the one thing this host's "library" knows, printed in feet or metres. */
export interface Span {
  readonly feet: number;
}

export const span = (feet: number): Span => ({ feet });

function isSpan(value: unknown): value is Span {
  return typeof value === "object" && value !== null && "feet" in value;
}

export class SpanError extends Error {
  readonly problems = [
    { code: "wrong-unit", path: ["span"], allowed: "feet", received: "3", remedy: "Write 3 ft." },
  ];
}

/** An entry for a whole number from 0 to 99. */
export function wholeEntry(initial: string): Entry<number> {
  return {
    entry: "number",
    initial,
    limits: "0 to 99",
    read: (text) =>
      /^\d{1,2}$/.test(text)
        ? { ok: true, value: Number(text) }
        : {
            ok: false,
            problem: {
              code: "unreadable",
              path: [],
              allowed: "a whole number from 0 to 99",
              received: text,
              remedy: "Write 7.",
            },
          },
  };
}

/** Reads the column `size` as numbers; what is no number is left out with a problem. */
export function readSizes(table: TableText) {
  const rows: { row: number; size: number }[] = [];
  const problems: unknown[] = [];
  table.rows.forEach(([size = ""], index) => {
    if (/^\d+$/.test(size)) rows.push({ row: index + 1, size: Number(size) });
    else
      problems.push({
        code: "unreadable",
        path: [table.name, index + 1, "size"],
        allowed: "a number",
        received: size,
        remedy: "Write 7.",
      });
  });
  const given = table.rows.length;
  return { kind: "reading", table: table.name, rows, given, problems, remarks: [] };
}

export function fakeHost(longWork: Readonly<Record<string, LongWork>> = {}): Host {
  const slow = Object.fromEntries(Object.keys(longWork).map((name) => [name, () => undefined]));
  return {
    names: {
      span,
      wholeEntry,
      readSizes,
      fail: (message: string) => {
        throw new Error(message);
      },
      spanFails: () => {
        throw new SpanError("no span");
      },
      ...slow,
    },
    longWork,
    operators,
    print: (value, units) => {
      if (!isSpan(value)) return undefined;
      const number = String(units === "us" ? value.feet : value.feet * 0.3048);
      const unit = units === "us" ? "ft" : "m";
      return { text: `${number} ${unit}`, number, unit };
    },
    toJson: (value) => (isSpan(value) ? { span: value.feet } : undefined),
    dateOf: (iso) => ({ date: iso }),
    sentence: ({ path, received, allowed, remedy }) =>
      `${path.join(", ")}: received ${received}; allowed is ${allowed}. ${remedy}`,
    problemsOf: (error) => (error instanceof SpanError ? error.problems : undefined),
    readCsv: (text, name) => {
      const [head = "", ...lines] = text.trimEnd().split("\n");
      const rows = lines.map((line) => line.split(","));
      return { kind: "table", name, columns: head.split(","), rows, decimal: "." };
    },
    writeCsv: ({ columns, rows }) => [columns, ...rows].map((row) => row.join(",")).join("\n"),
    docs: new Map([["span", { name: "span", rule: "feet as given", sources: ["S1"] }]]),
  };
}

export interface Opened {
  readonly session: Session;
  /** All states reported, in their order. */
  readonly reports: { turn: number; cells: readonly CellState[] }[];
  readonly started: CellId[];
  readonly settledTurns: { turn: number; working: readonly CellId[] }[];
}

/** Opens a document, or several by name of which the first is shown. */
export function open(
  texts: string | Readonly<Record<string, string>>,
  options: Partial<SessionOptions> = {},
): Opened {
  const documents = documentsOf(typeof texts === "string" ? { "a.md": texts } : texts);
  const host = options.host ?? fakeHost();
  const [main = ""] = documents.keys();
  const program = compileNotebook({ main, documents, names: new Set(Object.keys(host.names)) });
  const reports: Opened["reports"] = [];
  const started: CellId[] = [];
  const settledTurns: Opened["settledTurns"] = [];
  const session = createSession({
    host,
    program,
    surroundings: { units: "us", today: "2026-04-25" },
    onValues: (turn, cells) => reports.push({ turn, cells }),
    onStarting: (cell) => started.push(cell),
    onSettled: (turn, working) => settledTurns.push({ turn, working }),
    ...options,
  });
  return { session, reports, started, settledTurns };
}

/** A fenced cell. */
export function cell(name: string, formula: string): string {
  return `\`\`\`js cell ${name}\n${formula}\n\`\`\`\n\n`;
}

/** A fenced table. */
export function table(name: string, csv: string): string {
  return `\`\`\`csv table ${name}\n${csv}\n\`\`\`\n\n`;
}
