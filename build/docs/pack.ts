import type {
  Reference,
  ReferenceExample,
  ReferenceField,
  ReferenceName,
} from "../../notebooks/engine/types/index.ts";
import { signatureOf } from "./signature.ts";

/** A field in little room: name, type, help or 0, 1 where it may be left out. */
type PackedField = readonly [name: string, type: string, help: string | 0, optional: 0 | 1];

/** Statements as texts; one that says what it gives, with that. */
type PackedSteps = readonly (string | readonly [code: string, says: string])[];

interface PackedGroup {
  readonly name: string;
  readonly title: string;
  readonly names: readonly object[];
}

const emptyLists = { sources: [], throws: [], examples: [], parameters: [] } as const;

/**
 * The reference as its file holds it: small, for it is fetched over slow lines too. The fields of a
 * record stand where it first comes, later only its number; what can be told from the rest is left out.
 */
export function packReference({ groups, names }: Reference): string {
  const numbers = new Map<string, number>();
  const packed = (name: ReferenceName) =>
    Object.fromEntries(
      Object.entries(name).filter(([key, value]) => {
        if (key === "signature") return value !== signatureOf(name);
        if (key === "what") return value !== "function";
        if (key === "group") return false;
        return !(key in emptyLists && Array.isArray(value) && value.length === 0);
      }),
    );
  const nested = groups.map((group) => ({
    ...group,
    names: names.filter((name) => name.group === group.name).map(packed),
  }));
  return JSON.stringify(nested, (key, value: unknown) => {
    if (key === "examples") return (value as ReferenceName["examples"]).map(packSteps);
    if (key !== "fields" || !Array.isArray(value)) return value;
    const text = JSON.stringify(value);
    const number = numbers.get(text);
    if (number !== undefined) return number;
    numbers.set(text, numbers.size);
    return value.map(
      ({ name, type, help, optional }: ReferenceField): PackedField => [
        name,
        type,
        help ?? 0,
        optional ? 1 : 0,
      ],
    );
  });
}

/** Gives the reference back from the text of its file. */
export function unpackReference(text: string): Reference {
  const packed = JSON.parse(text) as readonly PackedGroup[];
  const records: (readonly ReferenceField[])[] = [];
  // In the order of the text, as the numbers were given.
  const filled = (value: unknown, key = ""): unknown => {
    if (key === "fields") {
      if (typeof value === "number") return records[value];
      const fields = (value as readonly PackedField[]).map(fieldOf);
      records.push(fields);
      return fields;
    }
    if (key === "examples") return (value as readonly PackedSteps[]).map(stepsOf);
    if (Array.isArray(value)) return value.map((each) => filled(each));
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([inner, each]) => [inner, filled(each, inner)]),
    );
  };
  const names = packed.flatMap((group) =>
    group.names.map((each) => {
      const what = { what: "function", group: group.name, ...emptyLists } as const;
      const name = { ...what, ...(filled(each) as Omit<ReferenceName, keyof typeof what>) };
      return { ...name, signature: name.signature ?? signatureOf(name) };
    }),
  );
  return { groups: packed.map(({ name, title }) => ({ name, title })), names };
}

function packSteps(steps: ReferenceExample): PackedSteps {
  return steps.map(({ code, says }) => (says === undefined ? code : [code, says]));
}

function stepsOf(steps: PackedSteps): ReferenceExample {
  return steps.map((step) => {
    if (typeof step === "string") return { code: step };
    const [code, says] = step;
    return { code, says };
  });
}

function fieldOf([name, type, help, optional]: PackedField): ReferenceField {
  return {
    name,
    type,
    ...(help === 0 ? {} : { help }),
    ...(optional ? { optional: true as const } : {}),
  };
}
