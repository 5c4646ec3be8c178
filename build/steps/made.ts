import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "esbuild";
import type { Reference } from "../../notebooks/engine/types/index.ts";
import { readDocs } from "../docs/read-docs.ts";
import { makeReference, withSigns } from "../docs/reference.ts";
import { root } from "../root.ts";
import { planners } from "./without-planner.ts";

/** What of the reference a notebook's working shows: small, because it travels with the room. */
export interface RuleDoc {
  readonly name: string;
  readonly rule?: string;
  readonly sources: readonly string[];
}

/** Everything that cells may name, from doc comments and the data's description. */
export function reference(): Reference {
  const long = new Set(Object.values(planners).flat());
  return makeReference({ root, data: dataFiles(), long });
}

/** Functions that read, check, print and reckon: a formula names them, but they say nothing of the trade. */
const tools = /^lib\/(?:check|measure|table)\//;

/** The rules and sources that explain a figure, from the doc comments of the library. */
export function ruleDocs(): readonly RuleDoc[] {
  return readDocs(join(root, "lib/index.ts"), root)
    .filter(({ what, file }) => what === "constant" || (what === "function" && !tools.test(file)))
    .filter((name) => name.rule !== undefined || name.sources.length > 0)
    .map(({ name, rule, sources }) => ({
      name,
      ...(rule === undefined ? {} : { rule: withSigns(rule) }),
      sources,
    }));
}

interface Source {
  readonly author?: string;
  readonly title: string;
  readonly number?: string;
  readonly year?: number | string;
}

/** Each source in one line, by its id. */
export function sourceTitles(): Readonly<Record<string, string>> {
  const all = JSON.parse(readFileSync(join(root, "data/sources.json"), "utf8")) as Record<
    string,
    Source
  >;
  return Object.fromEntries(
    Object.entries(all).map(([id, { author, title, number, year }]) => [
      id,
      [author, title, number, year].filter((part) => part !== undefined && part !== "").join(", "),
    ]),
  );
}

/**
 * Modules that are made while building: `made:rules` and `made:data` (the tables of
 * `data/` with their description, as text).
 */
export function madeModules(): Plugin {
  const makers: Readonly<Record<string, () => unknown>> = {
    rules: ruleDocs,
    data: slimDataFiles,
  };
  return {
    name: "made",
    setup(build) {
      build.onResolve({ filter: /^made:/ }, ({ path }) => ({
        path: path.slice("made:".length),
        namespace: "made",
      }));
      build.onLoad({ filter: /.*/, namespace: "made" }, ({ path }) => {
        const make = makers[path];
        if (!make) throw new Error(`made:${path} is not known; there are ${Object.keys(makers)}`);
        return { contents: JSON.stringify(make()), loader: "json" };
      });
    },
  };
}

/**
 * What cells need of the data: the tables, and of their description only what reading them takes.
 */
export function slimDataFiles(): Readonly<Record<string, string>> {
  const { "datapackage.json": description = "{}", ...tables } = dataFiles();
  const { resources } = JSON.parse(description) as Description;
  const slim = resources.map(({ name, path, schema }) => ({
    name,
    path,
    schema: {
      fields: schema.fields.map(({ name: field, type, unit }) => ({ name: field, type, unit })),
    },
  }));
  return { "datapackage.json": JSON.stringify({ resources: slim }), ...tables };
}

interface Description {
  readonly resources: readonly {
    readonly name: string;
    readonly path: string;
    readonly schema: {
      readonly fields: readonly {
        readonly name: string;
        readonly type: string;
        readonly unit?: string;
      }[];
    };
  }[];
}

/** The texts of `datapackage.json` and of every file it names, by path. */
export function dataFiles(): Readonly<Record<string, string>> {
  const read = (path: string) => readFileSync(join(root, "data", path), "utf8");
  const description = JSON.parse(read("datapackage.json")) as Description;
  const paths = ["datapackage.json", ...description.resources.map(({ path }) => path)];
  return Object.fromEntries(paths.map((path) => [path, read(path)]));
}
