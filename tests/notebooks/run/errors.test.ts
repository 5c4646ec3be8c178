import { describe, expect, it } from "vitest";
import { cell, open } from "./fake-host.ts";

async function errorOf(document: string, name = "a") {
  const { session } = open(document);
  await session.settled();
  const error = session.state(`a.md#${name}`)?.error;
  session.dispose();
  return error;
}

describe("errors belong to their cell", () => {
  it("at the line of the document where the formula failed", async () => {
    const document = `# Title\n\n${cell("a", "const b = 1;\n\nconst c = fail('no soil');\nreturn c;")}`;
    expect(await errorOf(document)).toMatchObject({
      kind: "formula",
      message: "a: no soil",
      line: 6,
      file: "a.md",
      names: ["a"],
    });
  });

  it("at a line of its own where a function of another cell failed", async () => {
    const far = cell("f", "() => {\n\n\n\n  return fail('far');\n}");
    const document = cell("a", "f()") + far;
    expect(await errorOf(document)).toMatchObject({ message: "a: far", line: 2 });
  });

  it("in clean words where the language's own are not", async () => {
    const error = await errorOf(cell("b", "({})") + cell("a", "b.bed.length"));
    expect(error?.message).toBe("a: “length” is asked of something that is not there.");
    const call = await errorOf(cell("b", "({})") + cell("a", "b.bed()"));
    expect(call?.message).toBe("a: b.bed is not a function, so it cannot be called.");
    const endless = await errorOf(cell("a", "const f = () => f();\nreturn f();"));
    expect(endless?.message).toBe("a: it calls itself without end.");
  });

  it("with the library's problems where it threw them", async () => {
    const error = await errorOf(cell("a", "spanFails()"));
    expect(error?.kind).toBe("problems");
    expect(error?.problems[0]).toMatchObject({ code: "wrong-unit", allowed: "feet" });
    expect(error?.message).toContain("Write 3 ft.");
  });

  it("or with the compiler's, where it does not compile", async () => {
    const error = await errorOf(`text\n\n${cell("a", "2 +")}`);
    expect(error).toMatchObject({ kind: "document", line: 4 });
  });

  it("and those who need it say which it is, the first in the row", async () => {
    const document = cell("a", "fail('x')") + cell("b", "a + 1") + cell("c", "b + 1");
    expect(await errorOf(document, "c")).toMatchObject({
      kind: "waits",
      names: ["a"],
      message: "Waits for a, which has an error.",
    });
    const two = cell("a", "fail('x')") + cell("b", "fail('y')") + cell("c", "a + b");
    expect((await errorOf(two, "c"))?.message).toBe("Waits for a and b, which have errors.");
  });

  it("whatever is thrown", async () => {
    expect((await errorOf(cell("a", "if (true) throw undefined;\nreturn 1;")))?.message).toBe(
      "a: undefined",
    );
    expect((await errorOf(cell("a", "if (true) throw {};\nreturn 1;")))?.message).toBe(
      "a: something was thrown that has no message.",
    );
    expect(
      (await errorOf(cell("a", 'if (true) throw { message: "no soil" };\nreturn 1;')))?.message,
    ).toBe("a: no soil");
    const hostile =
      "if (true) throw { get message() { throw 1 }, toString() { throw 2 } };\nreturn 1;";
    expect((await errorOf(cell("a", hostile)))?.message).toMatch(/^a: /);
  });

  it("while other cells go on", async () => {
    const { session } = open(cell("a", "fail('x')") + cell("b", "1 + 1"));
    await session.settled();
    expect(session.value("a.md#b")).toBe(2);
  });

  it("for both of two cells with one name", async () => {
    const { session } = open(cell("a", "1") + cell("a", "2") + cell("b", "3"));
    await session.settled();
    expect(session.state("a.md#a")?.error?.kind).toBe("document");
    expect(session.state("a.md#a/2")?.error?.kind).toBe("document");
    expect(session.value("a.md#b")).toBe(3);
  });

  it("for each member of a circle", async () => {
    const document = cell("a", "b + 1") + cell("b", "a + 1") + cell("c", "a + 1");
    expect((await errorOf(document, "a"))?.kind).toBe("document");
    expect((await errorOf(document, "b"))?.kind).toBe("document");
    expect((await errorOf(document, "c"))?.kind).toBe("waits");
  });
});
