import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCsv, type TableText, writeCsv } from "../../../lib/index.ts";
import { field, table } from "./tables.ts";

const of = (rows: readonly (readonly string[])[], decimal: "." | "," = "."): TableText => ({
  kind: "table",
  name: "beds",
  columns: ["bed", "note"],
  rows,
  decimal,
});

describe("writeCsv(table)", () => {
  it("is read back as the same table, hostile text included", () => {
    fc.assert(
      fc.property(table, (written) => {
        expect(readCsv(writeCsv(written), "beds")).toEqual(written);
      }),
      { numRuns: 500 },
    );
  });

  it("leaves no field that a spreadsheet would run", () => {
    fc.assert(
      fc.property(field, (text) => {
        const written = writeCsv(of([["A", text]])).slice("bed,note\nA,".length, -1);
        // What a spreadsheet sees: the field without its own quotes and outer blanks.
        const seen = written.startsWith('"') ? written.slice(1, -1).replaceAll('""', '"') : written;
        expect(seen.trim()).not.toMatch(/^[=+@-]/);
      }),
      { numRuns: 1000 },
    );
  });

  it("quotes a field with a separator, a quote, a line end or outer blanks", () => {
    expect(
      writeCsv(
        of([
          ["A,B", "8' 3\""],
          [" C ", "two\nlines"],
        ]),
      ),
    ).toBe('bed,note\n"A,B","8\' 3"""\n" C ","two\nlines"\n');
  });

  it("writes `;` where decimals have a comma", () => {
    expect(writeCsv(of([["A", "2,4 m"]], ","))).toBe('bed;note\nA;"2,4 m"\n');
  });

  it("writes lengths as they were typed", () => {
    expect(writeCsv(of([["A", "8 ft 3 1/2 in"]]))).toBe("bed,note\nA,8 ft 3 1/2 in\n");
  });

  it.each(["=SUM(A1)", "+1", "-5 ft", "@x", "  =1", "'=1"])("makes %s safe", (text) => {
    const csv = writeCsv(of([["A", text]]));
    expect(csv).toContain(`'${text}`);
    expect(readCsv(csv, "beds").rows).toEqual([["A", text]]);
  });
});
