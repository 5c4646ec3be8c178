import type {
  EngineProblem,
  Host,
  ShownCaution,
  ShownProblem,
  ShownRemark,
} from "../../types/index.ts";
import { withSentence } from "../failures.ts";
import { limits } from "./limits.ts";
import { capped, isList, isObject, itemsOf, ownKeys, property } from "./safe.ts";

/** How far into a value cautions and problems are looked for. */
const depthOfAsides = 2;

/** The cautions a value carries, those of its parts included, each once. */
export function cautionsOf(value: unknown): readonly ShownCaution[] {
  const found = new Map<string, ShownCaution>();
  for (const item of gathered(value, "cautions", limits.cautions)) {
    const caution = cautionOf(item);
    if (caution === undefined) continue;
    const key = `${caution.id} ${caution.because ?? ""}`;
    if (found.size < limits.cautions && !found.has(key)) found.set(key, caution);
  }
  return [...found.values()];
}

/** A caution made again from its plain parts; undefined where it is none. */
export function cautionOf(value: unknown): ShownCaution | undefined {
  if (!isObject(value)) return undefined;
  const [id, fact, advice] = ["id", "fact", "advice"].map((key) => property(value, key));
  if (typeof id !== "string" || typeof fact !== "string" || typeof advice !== "string") {
    return undefined;
  }
  const defersTo = property(value, "defersTo");
  const sources = property(value, "sources");
  const because = property(value, "because");
  return {
    id: capped(id, limits.cellText),
    fact: capped(fact, limits.text),
    advice: capped(advice, limits.text),
    defersTo: typeof defersTo === "string" ? capped(defersTo, limits.text) : "",
    sources: isList(sources) ? itemsOf(sources, limits.items).filter(isText) : [],
    ...(typeof because === "string" ? { because: capped(because, limits.text) } : {}),
  };
}

/** The problems that values carry about fields of tables and entries, each once. */
export function problemsOf(values: readonly unknown[], host: Host): readonly ShownProblem[] {
  const found = values.flatMap((value) => gathered(value, "problems", limits.problems));
  const problems = found.flatMap((item) => problemOf(item) ?? []);
  return eachOnce(problems).map((problem) => withSentence(problem, host));
}

/** The remarks that values carry, each once: what was understood, but is worth knowing. */
export function remarksOf(values: readonly unknown[]): readonly ShownRemark[] {
  const found = values.flatMap((value) => gathered(value, "remarks", limits.problems));
  return eachOnce(found.flatMap((item) => remarkOf(item) ?? []));
}

function remarkOf(value: unknown): ShownRemark | undefined {
  if (!isObject(value)) return undefined;
  const [path, text] = [property(value, "path"), property(value, "text")];
  if (!isText(text) || !isPath(path)) return undefined;
  return { path: itemsOf(path, 12) as ShownRemark["path"], text: capped(text, limits.text) };
}

function eachOnce<T>(records: readonly T[]): readonly T[] {
  return [...new Map(records.map((record) => [JSON.stringify(record), record])).values()];
}

/** A problem made again from its plain parts; undefined where it is none. */
export function problemOf(value: unknown): EngineProblem | undefined {
  if (!isObject(value)) return undefined;
  const [code, allowed, received, remedy] = ["code", "allowed", "received", "remedy"].map((key) =>
    property(value, key),
  );
  const path = property(value, "path");
  if (!isText(code) || !isText(allowed) || !isText(received) || !isText(remedy)) return undefined;
  if (!isPath(path)) return undefined;
  const also = property(value, "also");
  return {
    code: capped(code, limits.cellText),
    path: itemsOf(path, 12) as EngineProblem["path"],
    allowed: capped(allowed, limits.text),
    received: capped(received, limits.text),
    remedy: capped(remedy, limits.text),
    ...(isList(also) ? { also: itemsOf(also, limits.items).filter(isPath) } : {}),
  };
}

function gathered(value: unknown, key: string, limit: number): readonly unknown[] {
  const found: unknown[] = [];
  const look = (inner: unknown, depth: number): void => {
    if (!isObject(inner) || found.length >= limit) return;
    const list = isList(inner) ? undefined : property(inner, key);
    if (isList(list)) found.push(...itemsOf(list, limit));
    if (depth >= depthOfAsides) return;
    const parts = isList(inner)
      ? itemsOf(inner, limits.rows)
      : ownKeys(inner, limits.fields).map((name) => property(inner, name));
    for (const part of parts) look(part, depth + 1);
  };
  look(value, 0);
  return found;
}

function isText(value: unknown): value is string {
  return typeof value === "string";
}

function isPath(value: unknown): value is readonly (string | number)[] {
  return (
    isList(value) &&
    itemsOf(value, 12).every((step) => typeof step === "string" || typeof step === "number")
  );
}
