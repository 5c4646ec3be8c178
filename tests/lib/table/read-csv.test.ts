import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ProblemError, readCsv, writeCsv } from "../../../lib/index.ts";
import { field } from "./tables.ts";

describe("readCsv(text, name)", () => {
  // RFC 4180, section 2, rules 1 to 7, with the fields printed there.
  it.each([
    ["rule 1: records end in CRLF", "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", [["zzz", "yyy", "xxx"]]],
    [
      "rule 2: the last line may have no end",
      "aaa,bbb,ccc\r\nzzz,yyy,xxx",
      [["zzz", "yyy", "xxx"]],
    ],
    ["rule 5: fields may be quoted", '"aaa","bbb","ccc"\r\nzzz,yyy,xxx', [["zzz", "yyy", "xxx"]]],
    [
      "rule 6: a line end inside quotes",
      'a,b,c\r\n"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ["rule 7: a quote doubled", 'a,b,c\r\n"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
  ])("RFC 4180, %s", (_rule, text, rows) => {
    expect(readCsv(text, "list").rows).toEqual(rows);
  });

  it("takes tabs, as pasted from a spreadsheet", () => {
    const pasted = "bed\tlength\twidth\nA\t8'\t4'\nB\t8 ft\t48\"";
    expect(readCsv(pasted, "beds").rows).toEqual([
      ["A", "8'", "4'"],
      ["B", "8 ft", '48"'],
    ]);
    expect(readCsv(pasted, "beds").decimal).toBe(".");
  });

  it("takes `;`, and then decimals have a comma", () => {
    const read = readCsv("bed;length\nA;2,4 m", "beds");
    expect(read.rows).toEqual([["A", "2,4 m"]]);
    expect(read.decimal).toBe(",");
  });

  it("takes a byte-order mark, CR alone, and blank lines", () => {
    const read = readCsv("\uFEFFbed,length\r\r\nA,8 ft\r   \rB,4 ft\n\n", "beds");
    expect(read.columns).toEqual(["bed", "length"]);
    expect(read.rows).toEqual([
      ["A", "8 ft"],
      ["B", "4 ft"],
    ]);
  });

  it("takes quotes that do not begin a field for inches", () => {
    expect(readCsv("bed,length,width\nA,8' 3 1/2\",4'", "beds").rows).toEqual([
      ["A", "8' 3 1/2\"", "4'"],
    ]);
  });

  it("loses nothing where a quote is never closed or something follows it", () => {
    expect(readCsv('bed,note\n"A,x\n"B" bed,y\n"C,z', "beds").rows).toEqual([
      ['"A', "x"],
      ['"B" bed', "y"],
      ['"C', "z"],
    ]);
  });

  it("keeps what stands beyond the heading under columns without a name", () => {
    const read = readCsv("bed,length\nA,1,5 m,x\nB", "beds");
    expect(read.columns).toEqual(["bed", "length", "", ""]);
    expect(read.rows).toEqual([
      ["A", "1", "5 m", "x"],
      ["B", "", "", ""],
    ]);
  });

  it("drops columns at the end that are wholly empty, as spreadsheets add them", () => {
    expect(readCsv("bed,length,,\nA,8 ft,,", "beds").columns).toEqual(["bed", "length"]);
  });

  it("gives a table without columns for empty text", () => {
    expect(readCsv("", "beds")).toEqual({
      kind: "table",
      name: "beds",
      columns: [],
      rows: [],
      decimal: ".",
    });
  });

  it("gives every row as many fields as there are columns, whatever the text", () => {
    fc.assert(
      fc.property(fc.array(field, { maxLength: 12 }), (parts) => {
        const read = readCsv(parts.join(","), "beds");
        for (const row of read.rows) expect(row.length).toBe(read.columns.length);
      }),
    );
  });

  it("settles: what it wrote, it reads and writes the same", () => {
    fc.assert(
      fc.property(field, (text) => {
        const once = writeCsv(readCsv(text, "beds"));
        expect(writeCsv(readCsv(once, "beds"))).toBe(once);
      }),
    );
  });

  it("reads 2,000 rows in one go", () => {
    const rows = Array.from({ length: 2000 }, (_, row) => `B-${row},8 ft,4 ft`);
    expect(readCsv(["bed,length,width", ...rows].join("\n"), "beds").rows.length).toBe(2000);
  });

  it.each([
    [undefined, "missing"],
    [null, "missing"],
    [42, "unreadable"],
    [{}, "unreadable"],
  ])("refuses %s", (value, code) => {
    const error = caught(() => readCsv(value as string, "beds"));
    expect(error.problems.map((problem) => [problem.code, problem.path])).toEqual([
      [code, ["text"]],
    ]);
  });
});

function caught(call: () => unknown): ProblemError {
  try {
    call();
  } catch (error) {
    if (error instanceof ProblemError) return error;
  }
  throw new Error("no problem was thrown");
}
