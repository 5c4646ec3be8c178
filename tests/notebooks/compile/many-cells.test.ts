import { expect, test } from "vitest";
import { documentsOf } from "../../../notebooks/engine/document/index.ts";
import { cellsText, compileTexts } from "./compiled.ts";

// A bound for the worst machine, not a measure: what it guards against is work that grows with the
// square of the number of cells.
test("2,000 cells compile in reasonable time", () => {
  const formula = (i: number): string =>
    `const v = [c${Math.max(i - 1, 0)}, ${i}].map((x) => bedVolume(x, inch) * 2)\nreturn sumOf(v) + c${i >> 1} - ${i}`;
  const cells = Object.fromEntries(
    Array.from({ length: 2000 }, (_, i) => [`c${i}`, i === 0 ? "1" : formula(i)]),
  );
  const text = cellsText(cells);
  const started = performance.now();
  const program = compileTexts({ "n.md": text });
  const spent = performance.now() - started;
  expect(program.cells.every((cell) => cell.problem === undefined)).toBe(true);
  expect(program.cells).toHaveLength(2000);
  expect(spent).toBeLessThan(8000);
  expect(documentsOf({ "n.md": text }).get("n.md")?.blocks).toHaveLength(3999);
});
