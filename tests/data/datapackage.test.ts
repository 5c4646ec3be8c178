import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { loadPublished } from "../../build/published.ts";
import { dataFiles } from "../../build/steps/made.ts";
import { readCsv, readUnit } from "../../lib/index.ts";

const folder = join(import.meta.dirname, "../../data");
const textOf = (file: string) => readFileSync(join(folder, file), "utf8");

interface Field {
  readonly name: string;
  readonly type: string;
  readonly title?: string;
  readonly unit?: string;
  readonly constraints?: {
    readonly required?: boolean;
    readonly minimum?: number;
    readonly maximum?: number;
    readonly enum?: readonly string[];
  };
}

interface Resource {
  readonly name: string;
  readonly path: string;
  readonly schema: { readonly fields: readonly Field[] };
}

const { resources } = JSON.parse(textOf("datapackage.json")) as { resources: readonly Resource[] };
const sources = JSON.parse(textOf("sources.json")) as Record<
  string,
  Readonly<Record<string, unknown>>
>;
const plainMarks = ["common practice", "from memory"];

/** What is wrong with one field, in words; empty where nothing is. */
function faultOf(text: string, { type, constraints = {} }: Field): string {
  if (text === "") return constraints.required === true ? "is missing" : "";
  if (constraints.enum && !constraints.enum.includes(text)) return `“${text}” is not of the list`;
  if (type !== "number") return "";
  const value = Number(text);
  const { minimum = -Infinity, maximum = Infinity } = constraints;
  if (!Number.isFinite(value)) return `“${text}” is no number`;
  return value >= minimum && value <= maximum ? "" : `${text} is not from ${minimum} to ${maximum}`;
}

describe("the published tables", () => {
  it("are all described, and all that is described is there", () => {
    const files = readdirSync(folder).filter((file) => file.endsWith(".csv"));
    expect(resources.map(({ path }) => path).sort()).toEqual(files.sort());
  });

  it.each(resources.map((resource) => [resource.name, resource] as const))(
    "%s is valid",
    (_, resource) => {
      const { fields } = resource.schema;
      const table = readCsv(textOf(resource.path), resource.name);
      expect(table.columns).toEqual(fields.map(({ name }) => name));
      expect(table.rows.length).toBeGreaterThan(0);
      const faults = table.rows.flatMap((row, at) =>
        fields.flatMap((field, column) => {
          const fault = faultOf((row[column] ?? "").trim(), field);
          return fault === "" ? [] : [`row ${at + 1}, ${field.name} ${fault}`];
        }),
      );
      expect(faults).toEqual([]);
    },
  );

  it.each(resources.map((resource) => [resource.name, resource] as const))(
    "%s says what each number is in",
    (_, resource) => {
      for (const field of resource.schema.fields) {
        if (field.type !== "number") continue;
        expect(field.constraints?.minimum, `${field.name} has a least value`).toBeTypeOf("number");
        expect(field.constraints?.maximum, `${field.name} has a greatest value`).toBeTypeOf(
          "number",
        );
        if (field.unit !== undefined) expect(readUnit(field.unit).ok, field.unit).toBe(true);
        else
          expect(
            field.title ?? "",
            `${field.name} has no unit: its title says what it is`,
          ).not.toBe("");
      }
    },
  );

  it.each(resources.map((resource) => [resource.name, resource] as const))(
    "%s cites a source in every row",
    (_, resource) => {
      const table = readCsv(textOf(resource.path), resource.name);
      const [source, mark, page] = ["source", "mark", "page"].map((name) =>
        table.columns.indexOf(name),
      );
      for (const [at, row] of table.rows.entries()) {
        const id = row[source ?? -1] ?? "";
        for (const one of id.split(", "))
          expect(one in sources || plainMarks.includes(one), `row ${at + 1} cites “${one}”`).toBe(
            true,
          );
        // A plain mark stands in both places, or a source says where even a recalled value is from.
        if (plainMarks.includes(id)) expect(plainMarks).toContain(row[mark ?? -1]);
        else if ((page ?? -1) >= 0) expect(row[page ?? -1], `page of row ${at + 1}`).not.toBe("");
      }
    },
  );

  it("would notice a fault", () => {
    const field: Field = {
      name: "x",
      type: "number",
      constraints: { minimum: 0, maximum: 1, required: true },
    };
    expect(faultOf("", field)).not.toBe("");
    expect(faultOf("2", field)).not.toBe("");
    expect(faultOf("two", field)).not.toBe("");
    expect(faultOf("0.5", field)).toBe("");
  });

  it("are handed to cells as frozen rows", () => {
    const published = loadPublished(dataFiles());
    for (const { name } of resources) {
      const rows = published[name];
      expect(Object.isFrozen(rows), name).toBe(true);
      expect(
        rows?.every((row) => Object.isFrozen(row)),
        name,
      ).toBe(true);
    }
  });
});

describe("the sources", () => {
  it("have a title, an author and a year each", () => {
    const thin = Object.entries(sources).filter(
      ([, source]) => !source.title || !source.author || !source.year,
    );
    expect(thin.map(([id]) => id)).toEqual([]);
  });
});
