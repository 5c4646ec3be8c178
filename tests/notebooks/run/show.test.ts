import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jsonOf, show } from "../../../notebooks/engine/run/index.ts";
import { fakeHost, span } from "./fake-host.ts";

const host = fakeHost();
const shown = (value: unknown) => show(value, host, "us");

describe("values as they are drawn", () => {
  it("prints what the library knows, numbers and words", () => {
    expect(shown(span(3))).toEqual({
      kind: "figure",
      figure: { text: "3 ft", number: "3", unit: "ft" },
    });
    expect(shown(1 / 3)).toMatchObject({ figure: { text: "0.333333", unit: "" } });
    expect(shown(Number.NaN)).toMatchObject({ figure: { text: "not a number" } });
    expect(shown(true)).toMatchObject({ figure: { text: "yes" } });
    expect(shown("four boards")).toEqual({ kind: "text", text: "four boards" });
    expect(shown(undefined)).toEqual({ kind: "nothing" });
    expect(shown(() => 1)).toEqual({ kind: "text", text: "a function" });
  });

  it("makes a table of records, its columns named in words", () => {
    const table = shown([
      { bed: "A", soilDepth: span(1) },
      { bed: "B", soilDepth: span(2), note: "tall" },
    ]);
    expect(table).toMatchObject({
      kind: "table",
      columns: [
        { key: "bed", title: "Bed", unit: "", align: "left" },
        { key: "soilDepth", title: "Soil depth", unit: "ft", align: "right" },
        { key: "note", title: "Note" },
      ],
      more: 0,
    });
    if (table.kind !== "table") return;
    expect(table.rows[0]?.map(({ text }) => text)).toEqual(["A", "1 ft", ""]);
  });

  it("puts records inside a field into words", () => {
    const table = shown([{ board: 1, pieces: [{ name: "A side", length: span(8) }, span(2)] }]);
    expect(table).toMatchObject({ rows: [[{ text: "1" }, { text: "A side 8 ft, 2 ft" }]] });
  });

  it("sends at most 500 rows and says how many more there are", () => {
    const rows = Array.from({ length: 2000 }, (_, index) => ({ index }));
    const table = shown(rows);
    expect(table).toMatchObject({ kind: "table", more: 1500 });
  });

  it("makes a record of parts, without what is shown elsewhere", () => {
    expect(shown({ boardCount: 3, cautions: [], problems: [] })).toEqual({
      kind: "record",
      fields: [{ title: "Board count", shown: shown(3) }],
    });
  });

  it("knows cautions", () => {
    const caution = { id: "lift", fact: "It is heavy.", advice: "Take two trips.", sources: ["N"] };
    expect(shown([caution])).toEqual({
      kind: "cautions",
      cautions: [{ ...caution, defersTo: "" }],
    });
  });

  it("takes a drawing only as plain parts", () => {
    const tree = [1, "svg", { width: 3, onclick: () => 1 }, ["a", [2, "odd", {}, []]]];
    const drawing = { kind: "drawing", title: "T", alternative: "A", forms: [{ from: 0, tree }] };
    expect(shown(drawing)).toEqual({
      kind: "drawing",
      drawing: {
        title: "T",
        alternative: "A",
        forms: [{ from: 0, tree: [1, "svg", { width: "3" }, ["a"]] }],
      },
    });
  });

  it("takes a table of columns that has `objects`", () => {
    const frame = { objects: () => [{ bed: "A" }], columnNames: () => ["bed"] };
    expect(shown(frame)).toMatchObject({ kind: "table", rows: [[{ text: "A" }]] });
  });
});

describe("hostile values", () => {
  const itself: unknown[] = [1];
  itself.push(itself);
  const ring: Record<string, unknown> = { name: "ring" };
  ring.next = ring;
  const throws = {
    get bad(): never {
      throw new Error("no");
    },
    good: 1,
  };
  const traps = new Proxy(
    {},
    {
      get: () => {
        throw new Error("get");
      },
      ownKeys: () => {
        throw new Error("keys");
      },
      getPrototypeOf: () => {
        throw new Error("prototype");
      },
    },
  );
  const revoked = Proxy.revocable([], {});
  revoked.revoke();
  const deep: Record<string, unknown> = {};
  let at = deep;
  for (let depth = 0; depth < 5000; depth += 1) {
    const next = {};
    at.in = next;
    at = next;
  }
  const cases: readonly (readonly [string, unknown])[] = [
    ["a list in itself", itself],
    ["a record in itself", ring],
    ["a getter that throws", throws],
    ["a proxy that throws at everything", traps],
    ["a revoked proxy", revoked.proxy],
    ["a table of them", [throws, throws]],
    ["five thousand levels", deep],
    ["a huge hollow list", new Array(4_000_000_000)],
    ["a symbol", Symbol("x")],
    ["no prototype", Object.create(null)],
    ["a lying reading", { kind: "reading", rows: [null, 3], problems: [{ code: 1 }] }],
    ["a lying drawing", { kind: "drawing", forms: [{ tree: [1, "svg"] }, null] }],
    ["a lying table", { kind: "table", columns: [null], rows: [null, [undefined]] }],
    ["a lying element", { nodeType: 1, childNodes: 7 }],
    ["a print that throws", { feet: Symbol("x") }],
    ["a map of itself", new Map([["a", new Map()]])],
  ];

  it.each(cases)("%s is shown, and is plain data", (_, value) => {
    const plain = shown(value);
    expect(structuredClone(plain)).toEqual(plain);
    expect(JSON.stringify(plain).length).toBeLessThan(1_000_000);
  });

  it.each(cases)("%s can be printed as JSON", (name, value) => {
    const long = name === "a huge hollow list";
    const json = jsonOf(value, host, "us");
    expect(() => JSON.stringify(json)).not.toThrow();
    if (long) expect((json as unknown[]).at(-1)).toMatch(/^… and \d+ more$/);
  });

  it("whatever there is, showing never throws and gives plain data", () => {
    fc.assert(
      fc.property(fc.anything({ withDate: true, withMap: true, withSet: true }), (value) => {
        const plain = shown(value);
        expect(structuredClone(plain)).toEqual(plain);
        expect(JSON.parse(JSON.stringify(jsonOf(value, host, "us")))).toBeDefined();
      }),
    );
  });
});

describe("values as JSON", () => {
  it("keeps the library's own form, rows, yes and no", () => {
    const value = { wide: span(2), rows: [{ ok: true, none: undefined }], none: null };
    expect(jsonOf(value, host, "us")).toEqual({
      wide: { span: 2 },
      rows: [{ ok: true }],
      none: null,
    });
  });

  it("marks what it leaves off, and has words for what JSON has none for", () => {
    const ring: { of?: unknown } = {};
    ring.of = ring;
    let deep: unknown = 1;
    for (let depth = 0; depth < 14; depth += 1) deep = [deep];
    expect(
      jsonOf({ ring, none: Number.NaN, far: 1 / 0, was: new Error("no") }, host, "us"),
    ).toEqual({
      ring: { of: "itself again" },
      none: "not a number",
      far: "without end",
      was: "no",
    });
    expect(JSON.stringify(jsonOf(deep, host, "us"))).toBe(`${"[".repeat(12)}"…"${"]".repeat(12)}`);
  });

  it("gives a table's text as rows by column", () => {
    const table = {
      kind: "table",
      name: "t",
      columns: ["a", "b"],
      rows: [["1", "2"]],
      decimal: ".",
    };
    expect(jsonOf(table, host, "us")).toEqual([{ a: "1", b: "2" }]);
  });

  it("gives a reading's rows and a drawing's words", () => {
    expect(jsonOf({ kind: "reading", rows: [{ a: 1 }], problems: [] }, host, "us")).toEqual([
      { a: 1 },
    ]);
    const drawing = { kind: "drawing", title: "T", alternative: "A", forms: [] };
    expect(jsonOf(drawing, host, "us")).toEqual({ kind: "drawing", title: "T", alternative: "A" });
  });
});
