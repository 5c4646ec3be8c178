import { join } from "node:path";
import { parse } from "acorn";
import { describe, expect, it } from "vitest";
import { readDocs } from "../../build/docs/read-docs.ts";
import { loadPublished } from "../../build/published.ts";
import { dataFiles } from "../../build/steps/made.ts";
import * as lib from "../../lib/index.ts";
import * as fields from "../../notebooks/fields/index.ts";

// Every example of a doc comment is run, and what it says it gives (`// => …`) is compared.
const folder = join(import.meta.dirname, "../..");
const published = loadPublished(dataFiles());
const names = ["lib/index.ts", "notebooks/fields/index.ts"].flatMap((entry) =>
  readDocs(join(folder, entry), folder),
);

/** A result as an example states it: quantities printed, the rest as JSON with quantities printed. */
function stated(value: unknown): string {
  if (lib.isQuantity(value)) return lib.printQuantity(value);
  return (
    JSON.stringify(value, (_, inner: unknown) =>
      lib.isQuantity(inner) ? lib.printQuantity(inner) : inner,
    ) ?? "undefined"
  );
}

interface Compared {
  readonly got: string;
  readonly said: string;
}

/** Runs an example; gives every stated result beside what came out. */
async function run(example: string): Promise<readonly Compared[]> {
  const code = example.replace(/^```\w*\n|\n```$/g, "");
  const comments: { line: number; text: string }[] = [];
  const tree = parse(code, {
    ecmaVersion: 2023,
    sourceType: "module",
    allowAwaitOutsideFunction: true,
    locations: true,
    onComment: (_block, text, _start, _end, at) => {
      if (at) comments.push({ line: at.line, text: text.trim() });
    },
  });
  const compared: Compared[] = [];
  let program = "";
  for (const statement of tree.body) {
    const said = comments.find(
      (comment) => comment.line === statement.loc?.end.line && comment.text.startsWith("=>"),
    );
    const source = code.slice(statement.start, statement.end).replace(/;$/, "");
    program += said
      ? `$say(await (${source}), ${JSON.stringify(said.text.slice(2).trim())});\n`
      : `${source};\n`;
  }
  const AsyncFunction = (async () => {}).constructor as new (
    ...texts: string[]
  ) => (...values: unknown[]) => Promise<void>;
  const known = Object.entries({ ...lib, ...fields, published });
  const call = new AsyncFunction("$say", ...known.map(([name]) => name), program);
  await call(
    (value: unknown, said: string) => compared.push({ got: stated(value), said }),
    ...known.map(([, value]) => value),
  );
  return compared;
}

describe("examples of the reference", () => {
  const all = names.flatMap((name) => name.examples.map((example) => ({ name, example })));
  it.each(all.map(({ name, example }) => [name.name, example] as const))(
    "%s",
    async (_, example) => {
      const compared = await run(example);
      expect(compared.length, "an example states at least one result").toBeGreaterThan(0);
      for (const { got, said } of compared) expect(got).toBe(said);
    },
  );
});
