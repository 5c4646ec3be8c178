// @vitest-environment node
import { beforeAll, describe, expect, it } from "vitest";
import { figureNodes } from "../../../notebooks/engine/page/figure-text.ts";

/** Just enough of a page: elements that remember what they were made of. */
class FakeElement {
  className = "";
  text = "";
  setAttribute(name: string, value: string) {
    if (name === "class") this.className = value;
  }
  getAttribute(name: string) {
    return name === "class" ? this.className : null;
  }
  append(text: string) {
    this.text += text;
  }
}

beforeAll(() => {
  Object.assign(globalThis, { document: { createElement: () => new FakeElement() } });
});

const parts = (text: string) =>
  figureNodes(text).map((node) =>
    typeof node === "string" ? node : `<${(node as unknown as FakeElement).text}>`,
  );

describe("figureNodes", () => {
  it("sets fractions apart, with a narrow space after the whole", () => {
    expect(parts("3 1/2 in")).toEqual(["3", "< >", "<1⁄2>", " in"]);
    expect(parts("5′ 11 15⁄16″")).toEqual(["5′ 11", "< >", "<15⁄16>", "″"]);
    expect(parts("1/8 in")).toEqual(["<1⁄8>", " in"]);
  });

  it("leaves sections, dates and other strokes as they are", () => {
    for (const text of ["5/4x6 treated", "4/5/2026", "7/10 sacks", "$4.20/bag", "34 boards", ""])
      expect(parts(text).join("")).toBe(text);
  });
});
