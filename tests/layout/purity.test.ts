import { describe, expect, it } from "vitest";
import { filesBelow, textOf } from "./files.ts";

// The compiler keeps the DOM and Node out of `lib`; the clock and chance it lets through.
const banned =
  /\bDate\.now\b|\bnew Date\(|\bDate\(|\bMath\.random\b|\bperformance\.|\bconsole\.|\bprocess\./;

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|\s)\/\/.*$/gm, "");
}

describe("lib", () => {
  it("calls neither the clock nor a random source, and prints nothing", () => {
    const guilty = filesBelow("lib", /\.ts$/).filter((file) =>
      banned.test(withoutComments(textOf(file))),
    );
    expect(guilty).toEqual([]);
  });

  it("would notice", () => {
    expect(banned.test(withoutComments("const t = Date.now();"))).toBe(true);
    expect(banned.test(withoutComments("// Date.now() is banned\nconst t = 1;"))).toBe(false);
  });
});

describe("files of code", () => {
  it("are at most 400 lines long", () => {
    const long = ["lib", "notebooks", "build", "tests"]
      .flatMap((folder) => filesBelow(folder, /\.(ts|mjs|css|html)$/))
      .filter((file) => textOf(file).split("\n").length > 401);
    expect(long).toEqual([]);
  });

  it("name no place on somebody's machine and no registry", () => {
    const all = ["lib", "notebooks", "build", "tests", "data", ".ci"]
      .flatMap((folder) => filesBelow(folder, /./))
      .concat("README.md", "DEVELOPERS.md", "CHANGELOG.md", "package.json", "package-lock.json");
    const places = /\/(home|root|Users)\/\w|registry\.npm|\/work\//;
    const guilty = all.filter(
      (file) => !file.endsWith("purity.test.ts") && places.test(textOf(file)),
    );
    expect(guilty).toEqual([]);
  });
});
