import fc from "fast-check";
import type { TableText } from "../../../lib/index.ts";

const nasty = fc.constantFrom(
  '"',
  '""',
  ",",
  ";",
  "\t",
  "\n",
  "\r\n",
  "'",
  "''",
  "=1+1",
  "+1",
  "-1",
  "@x",
  "  ",
  " a ",
  "\uFEFF",
  "8' 3 1/2\"",
  '"quoted" and more',
  '"',
  "'=",
  "1,5",
  "é",
  "\\",
  "|",
);

/** A field as nobody would want to type it. */
export const field: fc.Arbitrary<string> = fc
  .array(
    fc.oneof(nasty, fc.string({ maxLength: 4 }), fc.string({ unit: "binary", maxLength: 2 })),
    {
      maxLength: 4,
    },
  )
  .map((parts) => parts.join(""));

/** A table whose last column has something in it, since wholly empty ones are dropped. */
export const table: fc.Arbitrary<TableText> = fc
  .record({
    width: fc.integer({ min: 1, max: 5 }),
    height: fc.integer({ min: 0, max: 6 }),
    decimal: fc.constantFrom("." as const, "," as const),
  })
  .chain(({ width, height, decimal }) =>
    fc.record({
      kind: fc.constant("table" as const),
      name: fc.constant("beds"),
      columns: fc
        .array(field, { minLength: width, maxLength: width })
        .map((columns) => [...columns.slice(0, -1), `x${columns.at(-1)}`]),
      rows: fc.array(fc.array(field, { minLength: width, maxLength: width }), {
        minLength: height,
        maxLength: height,
      }),
      decimal: fc.constant(decimal),
    }),
  );
