import { parseArgs } from "node:util";
import type { Units } from "../types/index.ts";
import { WrongUsage } from "./usage.ts";

export type Format = "text" | "json" | "csv";

/** What was asked for on the command line. */
export interface Asked {
  readonly notebook: string;
  /** Files by the table they stand for. */
  readonly tables: Readonly<Record<string, string>>;
  /** Texts by the entry they are typed into. */
  readonly sets: Readonly<Record<string, string>>;
  /** Names of cells; none for the pinned ones. */
  readonly cells: readonly string[];
  readonly units: Units;
  /** ISO date; undefined for the clock's. */
  readonly today: string | undefined;
  readonly format: Format;
  readonly trust: boolean;
  /** The file the notebook is to be saved as, with all that was entered. */
  readonly save: string | undefined;
}

const options = {
  table: { type: "string", multiple: true },
  set: { type: "string", multiple: true },
  cell: { type: "string", multiple: true },
  units: { type: "string" },
  today: { type: "string" },
  json: { type: "boolean" },
  csv: { type: "boolean" },
  trust: { type: "boolean" },
  save: { type: "string" },
  help: { type: "boolean", short: "h" },
} as const;

/**
 * Reads the arguments; "help" where only that is wanted.
 * @throws WrongUsage where they cannot be understood
 */
export function readArguments(argv: readonly string[]): Asked | "help" {
  const { values, positionals } = parsed(argv);
  if (values.help || (positionals.length === 0 && argv.length === 0)) return "help";
  const [command, notebook, ...rest] = positionals;
  if (command !== "run") throw new WrongUsage(`“${command ?? ""}” is no command: write run.`);
  if (notebook === undefined) throw new WrongUsage("Name the notebook to run.");
  if (rest.length > 0) throw new WrongUsage(`Only one notebook at a time: leave out ${rest[0]}.`);
  if (values.json && values.csv) throw new WrongUsage("Ask for --json or for --csv, not for both.");
  return {
    notebook,
    tables: pairs(values.table, "table", "NAME=FILE.csv"),
    sets: pairs(values.set, "set", "NAME=TEXT"),
    cells: values.cell ?? [],
    units: unitsOf(values.units),
    today: todayOf(values.today),
    format: values.json ? "json" : values.csv ? "csv" : "text",
    trust: values.trust ?? false,
    save: values.save,
  };
}

function parsed(argv: readonly string[]) {
  try {
    return parseArgs({ args: joined(argv), options, allowPositionals: true, strict: true });
  } catch (error) {
    throw new WrongUsage(inOurWords(error));
  }
}

/** What cannot be parsed is named with its option, without Node's advice on dashes. */
function inOurWords(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error);
  const [, option = ""] = /'(?:-\w, )?(-{1,2}[^' ]+)/.exec(text) ?? [];
  if (text.startsWith("Unknown option")) return `${option} is no option.`;
  if (/argument (missing|is ambiguous)/.test(text)) return `${option} needs something after it.`;
  return /does not take/.test(text) ? `${option} takes nothing after it.` : text;
}

/** `--set kerf=-1 in` is meant as written: an argument after an option is its value, dash or not. */
function joined(argv: readonly string[]): string[] {
  const taking = new Set(["--table", "--set", "--cell", "--units", "--today", "--save"]);
  const args: string[] = [];
  for (let at = 0; at < argv.length; at += 1) {
    const argument = argv[at] ?? "";
    const next = argv[at + 1];
    if (taking.has(argument) && next !== undefined && !next.startsWith("--")) {
      args.push(`${argument}=${next}`);
      at += 1;
    } else args.push(argument);
  }
  return args;
}

function pairs(
  given: readonly string[] | undefined,
  option: string,
  form: string,
): Readonly<Record<string, string>> {
  // As a map: a name may be that of something every record has.
  const found = new Map<string, string>();
  for (const text of given ?? []) {
    const equals = text.indexOf("=");
    const name = text.slice(0, equals).trim();
    if (equals < 1 || name === "") {
      throw new WrongUsage(`--${option} “${text}”: write --${option} ${form}.`);
    }
    if (found.has(name)) throw new WrongUsage(`--${option} names ${name} twice.`);
    found.set(name, text.slice(equals + 1));
  }
  return Object.fromEntries(found);
}

function unitsOf(text: string | undefined): Units {
  if (text === undefined || text === "us") return "us";
  if (text === "metric") return "metric";
  throw new WrongUsage(`--units “${text}”: allowed is us or metric.`);
}

function todayOf(text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  const day = new Date(`${text}T00:00:00Z`);
  const exists = !Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text;
  if (exists) return text;
  throw new WrongUsage(`--today “${text}”: allowed is a day that exists, as 2026-04-25.`);
}
