import { describe, expect, it } from "vitest";
import { writingPlace } from "../../../../notebooks/engine/page/edit/writing-place.ts";

/** Where the caret stands, which is written as `|`. */
function at(formula: string) {
  const caret = formula.indexOf("|");
  return writingPlace(formula.replace("|", ""), caret);
}

describe("where the caret stands in a formula", () => {
  it.each([
    ["a name", "goods + ta|", 8],
    ["nothing yet", "return |", 7],
    ["what is spread into a list", "[...z|]", 4],
    ["an argument", "settlingOrder(missing, |", 23],
    ["a value of an option", "f({ kerf: k| })", 10],
    ["within a text with a value in it", "`all $" + "{b|} of it`", 7],
    ["the body of a function", "rows.map((row) => { fo|", 20],
    ["a condition", "if (a|", 4],
  ])("a name may be written: %s", (_, formula, from) => {
    expect(at(formula)).toMatchObject({ kind: "name", from });
  });

  it.each([
    ['a text"', 'lengthEntry("8 f|'],
    ["a text with a quote in it", '"a \\"|'],
    ["a text of several lines", "`a b|`"],
    ["a comment", "a // plan|"],
    ["a longer comment", "a /* plan|"],
    ["a figure", "2.|"],
    ["a figure with a letter", "a + 2e|"],
    ["after what is in brackets", "(a).|"],
  ])("nothing is offered in %s", (_, formula) => {
    expect(at(formula).kind).toBe("none");
  });

  it.each([
    ["plan.|", ["plan"], 5],
    ["plan?.bo|", ["plan"], 6],
    ["plan.boards.x|", ["plan", "boards"], 12],
    ["plan\n  .boards|", ["plan"], 8],
    ["f(g(a), [b]).|", ["f()"], 13],
  ])("a field may be written in %s", (formula, path, from) => {
    expect(at(formula)).toEqual({ kind: "field", path, from });
  });

  it("the row of a table is known by the call it stands in", () => {
    expect(at("rows.map((row) => row.x|)")).toMatchObject({
      kind: "field",
      path: ["row"],
      call: { name: "rows.map", argument: 0 },
    });
  });

  it.each([
    ['lengthEntry("8 ft", { mi|', "lengthEntry", 1, []],
    ["f(a, { kerf: 1, m| })", "f", 1, ["kerf"]],
    ["f({ m|, kerf: 1 })", "f", 0, ["kerf"]],
    ["f({ a: g({ | }), b: 2 })", "g", 0, []],
    ["f({ a: g({ b: 1 }), | })", "f", 0, ["a"]],
  ])("an option may be written in %s", (formula, name, argument, given) => {
    expect(at(formula)).toMatchObject({ kind: "option", call: { name, argument }, given });
  });

  it("no option may be written where its value is, or in braces that are no argument", () => {
    expect(at("f({ kerf: | })").kind).toBe("name");
    expect(at("const x = { |").kind).toBe("name");
    expect(at("if (a) { |").kind).toBe("name");
  });

  it("the call around the caret is known in lists and braces, not in a function's body", () => {
    expect(at("f([a, |").call).toEqual({ name: "f", argument: 0 });
    expect(at("f(a, { b: |").call).toEqual({ name: "f", argument: 1 });
    expect(at("f(() => { |").call).toBeUndefined();
    expect(at("f(a) + |").call).toBeUndefined();
  });
});
