import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { build } from "esbuild";
import { describe, expect, it } from "vitest";
import { projectFolder, textOf } from "./files.ts";

const readme = textOf("README.md");

/** The code blocks of a language, in their order. */
function blocks(language: string): readonly string[] {
  return [...readme.matchAll(new RegExp(`^\`\`\`${language}\\n([\\s\\S]*?)^\`\`\``, "gm"))].map(
    ([, code = ""]) => code,
  );
}

describe("the README", () => {
  it("shows an example of the library that prints what it says", async () => {
    const [code = ""] = blocks("ts");
    const bundled = await build({
      stdin: { contents: code, loader: "ts", resolveDir: projectFolder },
      alias: { bedwright: join(projectFolder, "lib/index.ts") },
      bundle: true,
      write: false,
      format: "esm",
      platform: "node",
    });
    const printed = execFileSync(process.execPath, ["--input-type=module"], {
      input: bundled.outputFiles[0]?.text ?? "",
      encoding: "utf8",
    });
    const said = code
      .split("\n")
      .filter((line) => line.startsWith("// "))
      .map((line) => line.slice(3));
    expect(said.length).toBeGreaterThan(2);
    expect(printed.trim().split("\n")).toEqual(said);
  });

  it("gives the test command that .ci/run calls", () => {
    const commands = blocks("sh").map((code) => code.trim());
    expect(commands).toContain("npm ci && npm test");
    expect(textOf(".ci/run")).toMatch(/^npm ci && npm test$/m);
  });

  it("names only files that are there", () => {
    const named = [...readme.matchAll(/`((?:notebooks|data|lib)\/[\w./-]+)`/g)].map(
      ([, file = ""]) => file,
    );
    expect(named.length).toBeGreaterThan(3);
    for (const file of named) expect(() => textOf(file), file).not.toThrow();
  });
});
