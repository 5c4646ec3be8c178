import { dirname, join } from "node:path";
import ts from "typescript6";
import { describe, expect, it } from "vitest";
import { filesBelow, textOf } from "./files.ts";

/** What a part may import besides itself: parts of the project and packages. */
interface Allowed {
  readonly parts: readonly string[];
  readonly packages: readonly string[];
}

// The longest matching folder counts. Arrows point down only.
const rules: Readonly<Record<string, Allowed>> = {
  "lib/check": { parts: [], packages: [] },
  "lib/measure": { parts: ["lib/check"], packages: [] },
  "lib/table": { parts: ["lib/check", "lib/measure"], packages: [] },
  "lib/safety": { parts: ["lib/check", "lib/measure"], packages: [] },
  "lib/cutting": { parts: [], packages: [] },
  "lib/chance": { parts: ["lib/check", "lib/measure"], packages: [] },
  "lib/climate": { parts: ["lib/check", "lib/measure"], packages: [] },
  "lib/decay": { parts: ["lib/check", "lib/measure", "lib/climate"], packages: [] },
  ...Object.fromEntries(
    ["lumber", "fasteners", "liner"].map((trade) => [
      `lib/${trade}`,
      { parts: ["lib/check", "lib/measure", "lib/table", "lib/safety"], packages: [] },
    ]),
  ),
  ...Object.fromEntries(
    [
      ["soil", []],
      ["compost", ["lib/soil"]],
      ["mulch", ["lib/soil"]],
    ].map(([trade, above]) => [
      `lib/${trade}`,
      {
        parts: [
          "lib/check",
          "lib/measure",
          "lib/table",
          "lib/safety",
          "lib/chance",
          "lib/climate",
          "lib/decay",
          ...(above ?? []),
        ],
        packages: [],
      },
    ]),
  ),
  // How boards are cut is worked out in plain numbers below.
  "lib/lumber": {
    parts: ["lib/check", "lib/measure", "lib/table", "lib/safety", "lib/cutting"],
    packages: [],
  },
  "lib/cost": {
    parts: [
      "lib/check",
      "lib/measure",
      "lib/table",
      "lib/safety",
      "lib/soil",
      "lib/lumber",
      "lib/liner",
    ],
    packages: [],
  },
  "lib/buying": {
    parts: [
      "lib/check",
      "lib/measure",
      "lib/table",
      "lib/safety",
      "lib/cutting",
      "lib/lumber",
      "lib/liner",
      "lib/cost",
    ],
    packages: [],
  },
  "lib/drawing": { parts: ["lib/check", "lib/measure", "lib/lumber"], packages: [] },
  "lib/garden": { parts: ["lib"], packages: [] },
  lib: { parts: ["lib"], packages: [] },
  "notebooks/fields": { parts: ["lib", "notebooks/engine/types"], packages: [] },
  "notebooks/engine/types": { parts: [], packages: [] },
  "notebooks/engine/document": {
    parts: ["notebooks/engine/types"],
    packages: ["markdown-it"],
  },
  "notebooks/engine/compile": {
    parts: ["notebooks/engine/types", "notebooks/engine/document"],
    packages: ["acorn", "eslint-scope", "magic-string"],
  },
  "notebooks/engine/run": {
    parts: ["notebooks/engine/types", "notebooks/engine/document", "notebooks/engine/compile"],
    packages: ["@observablehq/runtime"],
  },
  "notebooks/engine/worker": {
    parts: [
      "notebooks/engine/types",
      "notebooks/engine/run",
      "notebooks/engine/document",
      "notebooks/engine/compile",
    ],
    packages: [],
  },
  "notebooks/engine/headless": {
    parts: [
      "notebooks/engine/types",
      "notebooks/engine/run",
      "notebooks/engine/document",
      "notebooks/engine/compile",
    ],
    packages: ["node:"],
  },
  "notebooks/engine/store": { parts: ["notebooks/engine/types"], packages: ["idb"] },
  // Comparing what is kept: pure, so that the page need only draw it.
  "notebooks/engine/plans": { parts: ["notebooks/engine/types"], packages: [] },
  // What a link holds: pure, and read as what it is, a stranger's text.
  "notebooks/engine/share": { parts: ["notebooks/engine/types"], packages: ["fflate"] },
  "notebooks/engine/page": {
    parts: [
      "notebooks/engine/types",
      "notebooks/engine/document",
      "notebooks/engine/store",
      "notebooks/engine/plans",
      "notebooks/engine/share",
    ],
    packages: ["markdown-it"],
  },
  // Fetched when somebody shares a notebook or opens a link.
  "notebooks/engine/page/share": {
    parts: [
      "notebooks/engine/types",
      "notebooks/engine/document",
      "notebooks/engine/store",
      "notebooks/engine/plans",
      "notebooks/engine/share",
      "notebooks/engine/page",
    ],
    packages: ["uqr"],
  },
  // Fetched when somebody first writes: the editor, and the parser that renaming needs.
  "notebooks/engine/page/edit": {
    parts: [
      "notebooks/engine/types",
      "notebooks/engine/document",
      "notebooks/engine/compile",
      "notebooks/engine/page",
    ],
    packages: ["@codemirror/"],
  },
};

function ruleFor(file: string): [part: string, allowed: Allowed] | undefined {
  let part = dirname(file);
  while (part !== ".") {
    const allowed = rules[part];
    if (allowed) return [part, allowed];
    part = dirname(part);
  }
  return undefined;
}

interface Import {
  readonly name: string;
  /** Nothing of it is left when the file runs. */
  readonly isType: boolean;
}

function importsOf(file: string): readonly Import[] {
  const source = ts.createSourceFile(file, textOf(file), ts.ScriptTarget.Latest);
  return source.statements.flatMap((statement): Import[] => {
    if (ts.isImportDeclaration(statement) && ts.isStringLiteral(statement.moduleSpecifier)) {
      const isType = statement.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword;
      return [{ name: statement.moduleSpecifier.text, isType }];
    }
    const from = ts.isExportDeclaration(statement) ? statement.moduleSpecifier : undefined;
    if (!ts.isExportDeclaration(statement) || !from || !ts.isStringLiteral(from)) return [];
    return [{ name: from.text, isType: statement.isTypeOnly }];
  });
}

function within(file: string, part: string): boolean {
  return file.startsWith(`${part}/`);
}

/** The imports of a file that point where they must not. */
function faultsOf(file: string): readonly string[] {
  const found = ruleFor(file);
  if (!found) return [`${file}: no rule says what it may import`];
  const [part, allowed] = found;
  return importsOf(file).flatMap(({ name }) => {
    if (!name.startsWith(".")) {
      const fine = allowed.packages.some(
        (pack) => name === pack || (/[:/]$/.test(pack) && name.startsWith(pack)),
      );
      return fine ? [] : [`${file} imports the package ${name}`];
    }
    const target = join(dirname(file), name);
    const fine = within(target, part) || allowed.parts.some((other) => within(target, other));
    return fine ? [] : [`${file} imports ${target}`];
  });
}

describe("arrows point down only", () => {
  const files = [...filesBelow("lib", /\.ts$/), ...filesBelow("notebooks", /\.ts$/)];

  it("holds for every file of lib and notebooks", () => {
    expect(files.length).toBeGreaterThan(50);
    expect(files.flatMap(faultsOf)).toEqual([]);
  });

  it("is a check that can fail", () => {
    expect(within("lib/soil/x.ts", "lib/soil")).toBe(true);
    expect(within("lib/soils/x.ts", "lib/soil")).toBe(false);
    expect(ruleFor("lib/measure/deep/x.ts")?.[0]).toBe("lib/measure");
    expect(importsOf("lib/index.ts").map(({ name }) => name)).toContain("./soil/index.ts");
  });

  it("has no cycle of files", () => {
    const state = new Map<string, "open" | "done">();
    const cycles: string[] = [];
    const visit = (file: string, trail: readonly string[]): void => {
      if (state.get(file) === "done") return;
      if (state.get(file) === "open") {
        cycles.push([...trail.slice(trail.indexOf(file)), file].join(" → "));
        return;
      }
      state.set(file, "open");
      for (const { name, isType } of importsOf(file))
        if (!isType && name.startsWith(".") && name.endsWith(".ts") && !name.endsWith(".d.ts"))
          visit(join(dirname(file), name), [...trail, file]);
      state.set(file, "done");
    };
    for (const file of files) visit(file, []);
    expect(cycles).toEqual([]);
  });
});
