import { describe, expect, it } from "vitest";
import {
  optionalColumn,
  readCount,
  readCsv,
  readRows,
  requiredColumn,
} from "../../../lib/index.ts";

const whole = (text: string, { path }: { path: readonly (string | number)[] }) =>
  readCount(text, { path, min: 1 });

describe("requiredColumn(read), optionalColumn(read)", () => {
  const columns = { a: requiredColumn(whole), b: optionalColumn(whole) };

  it("makes a blank field of a required column a problem", () => {
    const reading = readRows(readCsv("a,b\n,1", "list"), columns);
    expect(reading.problems.map(({ code, path }) => [code, path])).toEqual([
      ["missing", ["list", 1, "a"]],
    ]);
  });

  it("leaves a blank field of an optional column undefined", () => {
    expect(readRows(readCsv("a,b\n1,", "list"), columns).rows).toEqual([
      { a: 1, b: undefined, row: 1 },
    ]);
  });
});
