import { describe, expect, it } from "vitest";
import { leavesOf, type Part } from "../../../notebooks/engine/page/room-view/leaves.ts";

/** Stands for nodes of the page: a letter for what each is and a number to tell it. */
function leaves(page: string): string[] {
  const parts: Record<string, Part> = {
    h: "heading",
    w: "words",
    r: "row",
    t: "thing",
    n: "nothing",
  };
  const nodes = page.split(" ").map((textContent) => ({ textContent }) as HTMLElement);
  return leavesOf(nodes, ({ textContent }) => parts[textContent?.[0] ?? ""] ?? "nothing").map(
    ({ heading, nodes: shown }) =>
      `${heading}: ${shown.map(({ textContent }) => textContent).join(" ")}`,
  );
}

describe("the leaves of the room", () => {
  it("show words with what follows them, one thing at a time", () => {
    expect(leaves("h1 w1 t1 t2 w2 w3 t3")).toEqual(["h1: w1 t1", "h1: t2", "h1: w2 w3 t3"]);
  });

  it("show rows together while they fit", () => {
    expect(leaves("h1 r1 r2 r3 r4 r5 t1")).toEqual(["h1: r1 r2 r3", "h1: r4 r5", "h1: t1"]);
    expect(leaves("h1 r1 w1 r2")).toEqual(["h1: r1", "h1: w1 r2"]);
  });

  it("begin anew under each heading and leave nothing out that is to be seen", () => {
    expect(leaves("w0 h1 w1 h2 n1 r1 n2 h3")).toEqual([": w0", "h1: w1", "h2: r1"]);
    expect(leaves("n1")).toEqual([]);
  });
});
