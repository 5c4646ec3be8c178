import { describe, expect, it } from "vitest";
import { aq } from "../../build/arquero.ts";
import { makeHost } from "../../build/host.ts";
import { dataFiles } from "../../build/steps/made.ts";
import {
  cubicYard,
  foot,
  inch,
  money,
  ProblemError,
  printQuantity,
  quantityJson,
  readSection,
  times,
} from "../../lib/index.ts";
import { compileNotebook } from "../../notebooks/engine/compile/index.ts";
import { documentsOf } from "../../notebooks/engine/document/index.ts";
import { createSession } from "../../notebooks/engine/run/index.ts";
import type { LongWorkControl } from "../../notebooks/engine/types/index.ts";

const longWork = () => () => Promise.reject(new Error("no solver here"));
const host = makeHost({
  longWork,
  data: dataFiles(),
  extras: { aq },
});

describe("the host", () => {
  it("prints what the library knows in either system", () => {
    expect(host.print(times(2.5, foot), "us")?.text).toBe("2 ft 6 in");
    expect(host.print(times(4.2, cubicYard), "us")).toMatchObject({
      text: "4.2 cu yd",
      number: "4.2",
      unit: "cu yd",
      second: "3.21 m³",
    });
    expect(host.print({ year: 2026, month: 4 }, "us")?.text).toBe("April 2026");
    const section = readSection("2x12", { path: [] });
    expect(section.ok && host.print(section.value, "us")?.text).toBe("2x12");
    const range = {
      low: foot,
      likely: times(2, foot),
      high: times(3, foot),
      basis: ["from memory"],
    };
    expect(host.print(range, "metric")?.text).toMatch(/305.*914/);
    expect(host.print({ anything: 1 }, "us")).toBeUndefined();
  });

  it("gives JSON in the shapes that other programs are promised", () => {
    expect(host.toJson(cubicYard, "us")).toEqual(quantityJson(cubicYard, "us"));
    expect(host.toJson(money(123.45, "USD"), "us")).toEqual({ amount: "123.45", currency: "USD" });
    expect(host.toJson({ year: 2026, month: 4, day: 25 }, "us")).toBe("2026-04-25");
    expect(host.toJson({ a: 1 }, "us")).toBeUndefined();
    const range = { low: foot, likely: times(2, foot), high: times(3, foot), basis: ["x"] };
    expect(host.toJson(range, "us")).toMatchObject({
      ...{ si: 0.6096, dimension: "length", text: host.print(range, "us")?.text },
      low: { si: 0.3048, dimension: "length", text: "1 ft" },
    });
    expect(host.toJson({ low: 1, likely: 2, high: 3, basis: ["x"] }, "us")).toMatchObject({
      ...{ low: 1, likely: 2, high: 3 },
    });
  });

  it("refuses a day that is none", () => {
    expect(() => host.dateOf("25/4/2026")).toThrow(ProblemError);
    expect(host.dateOf("2026-04-25")).toEqual({ year: 2026, month: 4, day: 25 });
  });

  it("makes what comes from another thread whole again", async () => {
    const clone = structuredClone({ length: inch });
    const longWork = () => async (_: unknown, control: LongWorkControl) => {
      control.improved?.(structuredClone({ length: foot }));
      return clone;
    };
    const cloning = makeHost({ data: dataFiles(), longWork });
    const better: { length: typeof foot }[] = [];
    const control = {
      improved: (value: unknown) => better.push(value as (typeof better)[number]),
      signal: { aborted: false, addEventListener: () => undefined },
      progress: () => undefined,
    };
    const answer = (await cloning.longWork.planBoards?.([], control)) as typeof clone;
    expect(() => `${answer.length}`).toThrow(TypeError);
    expect(printQuantity(answer.length)).toBe("1 in");
    expect(() => `${better[0]?.length}`).toThrow(TypeError);
    expect(better.map(({ length }) => printQuantity(length))).toEqual(["1 ft"]);
  });
});

describe("formulas with the whole library", () => {
  async function shownOf(formula: string) {
    const documents = documentsOf({ "a.md": `\`\`\`js cell a\n${formula}\n\`\`\`\n` });
    const names = new Set(Object.keys(host.names));
    const program = compileNotebook({ main: "a.md", documents, names });
    const session = createSession({
      host,
      program,
      surroundings: { units: "us", today: "2026-04-25" },
    });
    await session.settled();
    const { error, shown } = session.state("a.md#a") ?? {};
    if (error) throw new Error(error.message);
    return shown;
  }

  it("reckon with quantities", async () => {
    expect(await shownOf("2 * foot + 6 * inch")).toMatchObject({ figure: { text: "2 ft 6 in" } });
    await expect(shownOf("foot + pound")).rejects.toThrow(/1 ft \+ 1 lb/);
  });

  it("keep a quantity with a sign before it, and refuse text there with what to do", async () => {
    expect(await shownOf("+(3 * foot)")).toMatchObject({ figure: { text: "3 ft" } });
    await expect(shownOf('+"3"')).rejects.toThrow(/“3.*readNumber/);
  });

  it("reckon with them in a table's verbs", async () => {
    const formula =
      "aq.from([{ bed: 'A', depth: foot }, { bed: 'B', depth: inch }]).derive({ twice: d => d.depth * 2 }).select('bed', 'twice')";
    expect(await shownOf(formula)).toMatchObject({
      kind: "table",
      rows: [
        [{ text: "A" }, { text: "2 ft" }],
        [{ text: "B" }, { text: "2 in" }],
      ],
    });
  });

  it("name published rows", async () => {
    expect(await shownOf("published.bagSizes.length")).toMatchObject({ kind: "figure" });
  });
});
