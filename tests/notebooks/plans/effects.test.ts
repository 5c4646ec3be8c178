import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeHost } from "../../../build/host.ts";
import { dataFiles } from "../../../build/steps/made.ts";
import { compileNotebook } from "../../../notebooks/engine/compile/index.ts";
import { documentsOf } from "../../../notebooks/engine/document/index.ts";
import {
  answerOf,
  type Effect,
  effectOf,
  feeding,
  needsLongWork,
  type Outcome,
  ranked,
  variedEntry,
} from "../../../notebooks/engine/plans/index.ts";
import { createSession, type Session } from "../../../notebooks/engine/run/index.ts";
import type { CellId } from "../../../notebooks/engine/types/index.ts";

const host = makeHost({
  longWork: () => () => Promise.reject(new Error("no solver here")),
  data: dataFiles(),
});

const names = new Set(Object.keys(host.names));

async function opened(text: string): Promise<Session> {
  const program = compileNotebook({
    main: "a.md",
    documents: documentsOf({ "a.md": text }),
    names,
  });
  const session = createSession({
    host,
    program,
    surroundings: { units: "us", today: "2026-04-25" },
  });
  await session.settled();
  return session;
}

function outcome(session: Session, id: CellId, text: string): Outcome {
  const answer = answerOf(session.state(id));
  if (answer?.is !== "figure" || answer.measure === undefined) throw new Error(`${id} has no size`);
  return { text, figure: answer.figure, measure: answer.measure };
}

/** Every entry over its range, as the page does it in a room. */
async function effects(
  session: Session,
  answer: CellId,
  share: number,
): Promise<readonly Effect[]> {
  const present = outcome(session, answer, "now");
  const found: Effect[] = [];
  for (const { id } of session.outline) {
    const entry = session.state(id)?.entry;
    if (!entry) continue;
    const tried: Outcome[] = [];
    for (const { candidates } of variedEntry(id, entry, { share }).trials)
      for (const text of candidates) {
        session.enter({ [id]: text });
        await session.settled();
        if (session.state(id)?.entry?.problem !== undefined) continue;
        tried.push(outcome(session, answer, text));
        break;
      }
    session.reset([id]);
    await session.settled();
    const effect = effectOf(id, present, tried);
    if (effect) found.push(effect);
  }
  return ranked(found);
}

const entry = (name: string, formula: string) => `\`\`\`js cell ${name}\n${formula}\n\`\`\`\n\n`;

describe("what matters most", () => {
  it("of a bill worked out by hand", async () => {
    // 4 boards at $20 and 6 bags at $5 with 10 % on all: 1.1 x (80 + 30) = $121. A fifth of the
    // board's price moves it by 1.1 x 4 x 8 = $35.20 in all, of the bag's by 1.1 x 6 x 2 = $13.20,
    // of the boards (3 to 5) by 1.1 x 2 x 20 = $44, of the tax (8 % to 12 %) by 0.04 x 110 = $4.40;
    // without bags there are 1.1 x 30 = $33 less to pay.
    const session = await opened(
      [
        entry("board", 'moneyEntry("$20.00")'),
        entry("boards", 'countEntry("4")'),
        entry("bag", 'moneyEntry("$5.00")'),
        entry("tax", 'percentEntry("10 %")'),
        entry("bagsToo", 'yesNoEntry("yes")'),
        entry("idle", 'lengthEntry("3 ft")'),
        entry("pay", "(1 + tax) * (boards * board + (bagsToo ? 6 : 0) * bag)"),
      ].join(""),
    );
    const found = await effects(session, "a.md#pay", 0.2);
    const sizes = found.map(({ id, size }) => [id.slice(5), Number(size.toFixed(2))]);
    expect(sizes).toEqual([
      ["boards", 44],
      ["board", 35.2],
      ["bagsToo", 33],
      ["bag", 13.2],
      ["tax", 4.4],
      ["idle", 0],
    ]);
    const boards = found[0];
    expect([boards?.low.text, boards?.low.figure.text]).toEqual(["3", "$99.00"]);
    expect([boards?.high.text, boards?.high.figure.text]).toEqual(["5", "$143.00"]);
    // Yes is as things are: the other end is the present answer.
    expect(found[2]?.high.text).toBe("now");
  });

  it("of a sum is each coefficient times its range, the largest first", async () => {
    const part = fc.record({
      value: fc.integer({ min: 5, max: 900 }),
      coefficient: fc.integer({ min: -50, max: 50 }),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(part, { minLength: 1, maxLength: 6 }), async (parts) => {
        const names = parts.map((_, at) => `e${at}`);
        const cells = parts.map(({ value }, at) =>
          entry(names[at] ?? "", `numberEntry("${value}")`),
        );
        const sum = parts
          .map(({ coefficient }, at) => `(${coefficient}) * ${names[at]}`)
          .join(" + ");
        const session = await opened(`${cells.join("")}${entry("sum", `7 + ${sum}`)}`);
        const found = await effects(session, "a.md#sum", 0.2);
        expect(found).toHaveLength(parts.length);
        for (const { id, size } of found) {
          const { value, coefficient } = parts[names.indexOf(id.slice(5))] ?? {
            value: 0,
            coefficient: 0,
          };
          expect(size).toBeCloseTo(Math.abs(coefficient) * 0.4 * value, 6);
        }
        for (const [at, { size }] of found.entries())
          if (at > 0) expect(size).toBeLessThanOrEqual(found[at - 1]?.size ?? 0);
      }),
      { numRuns: 12 },
    );
  });

  it("keeps the order of those as large, and compares nothing with what is of another kind", () => {
    const at = (size: number, of = "length"): Outcome => ({
      text: String(size),
      figure: { text: String(size), number: String(size), unit: "" },
      measure: { of, low: size, likely: size, high: size },
    });
    const first = effectOf("a.md#a", at(0), [at(2)]);
    const second = effectOf("a.md#b", at(0), [at(-2)]);
    const third = effectOf("a.md#c", at(0), [at(1), at(3)]);
    if (!first || !second || !third) throw new Error("not comparable");
    expect(ranked([first, second, third]).map(({ id }) => id)).toEqual([
      "a.md#c",
      "a.md#a",
      "a.md#b",
    ]);
    expect(effectOf("a.md#d", at(0), [at(2, "mass")])).toBeUndefined();
  });
});

describe("what feeds an answer", () => {
  it("is all it rests on, and whether any of that takes long", async () => {
    const session = await opened(
      [
        entry("a", 'numberEntry("1")'),
        entry("b", 'numberEntry("1")'),
        entry("between", "a + 1"),
        entry("answer", "between * 2"),
        entry("slow", "planBoards([], {})"),
        entry("afterSlow", "slow ? b : 0"),
      ].join(""),
    );
    const cells = new Map(session.outline.map((cell) => [cell.id, cell]));
    expect([...feeding("a.md#answer", cells)].sort()).toEqual([
      "a.md#a",
      "a.md#answer",
      "a.md#between",
    ]);
    expect(needsLongWork("a.md#answer", cells)).toBe(false);
    expect(needsLongWork("a.md#afterSlow", cells)).toBe(true);
  });
});
