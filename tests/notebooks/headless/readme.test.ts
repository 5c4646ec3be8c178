import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../../../build/root.ts";
import { type Installed, install } from "./started.ts";

let here: Installed;
beforeAll(async () => {
  here = await install({});
});
afterAll(() => here.remove());

describe("the README's notebook of one's own", () => {
  it("runs as it stands", async () => {
    const readme = readFileSync(join(root, "README.md"), "utf8");
    const [, text = ""] = /^````md\n([\s\S]*?)^````$/m.exec(readme) ?? [];
    here.write("home/own.md", text);
    const { code, out } = await here.run(["run", "own.md", "--trust", "--json"]);
    expect(code).toBe(0);
    // (30 ft x 3 ft + 25.5 ft x 2 ft) x 1/6 ft, and a cubic foot is 0.028316846592 m3 by definition.
    expect(JSON.parse(out).gravel.si).toBeCloseTo(23.5 * 0.028316846592, 9);
  });
});
