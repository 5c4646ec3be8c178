import { execFileSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { again, answer, openNotebook, settled, useSite } from "./harness.ts";

const site = useSite();

/** In points: 8.5 by 11 inches, and 210 by 297 mm (ISO 216). */
const sheets = { Letter: [612, 792], A4: [595.28, 841.89] } as const;

describe.each(["Letter", "A4"] as const)("on %s", again, (format) => {
  it.each([1440, 360])(
    "prints the whole notebook from a page %i wide",
    async (width) => {
      const page = await site.page({ viewport: { width, height: 800 } });
      await openNotebook(page, site, "rebuild.md");
      await settled(page);
      const total = await answer(page, "total").textContent();
      const rows = await page.locator("table.led:not(.edit)").count();
      const file = join(mkdtempSync(join(tmpdir(), "bedwright-")), "sheets.pdf");
      writeFileSync(file, await page.pdf({ format, preferCSSPageSize: true }));
      const text = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" });
      const info = execFileSync("pdfinfo", [file], { encoding: "utf8" });
      const [wide, high] =
        /Page size:\s+([\d.]+) x ([\d.]+)/.exec(info)?.slice(1).map(Number) ?? [];
      // The browser rounds a sheet to hundredths of an inch.
      expect(Math.abs((wide ?? 0) - sheets[format][0])).toBeLessThan(1);
      expect(Math.abs((high ?? 0) - sheets[format][1])).toBeLessThan(1);
      const count = Number(/Pages:\s+(\d+)/.exec(info)?.[1]);
      expect(text).toContain(`1 of ${count}`);
      expect(text).toContain(`${count} of ${count}`);
      // The tally closes the last sheet.
      const last = text.split("\f").at(-2) ?? "";
      expect(last).toContain("The tally");
      expect(last.replace(/\s/g, "")).toContain(total?.replace(/\s/g, ""));
      // Controls stay on the screen; folded tables are printed whole.
      for (const control of ["Add a row", "Undo last change", "Working", "more rows", "Read Write"])
        expect(text, control).not.toContain(control);
      expect(rows).toBeGreaterThan(3);
      await page.context().close();
    },
    60_000,
  );
});
