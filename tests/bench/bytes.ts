import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";

const site = join(process.cwd(), "build/out/site");

/** What a visit transfers, by part; `when` says what asks for it. */
const groups: readonly { readonly name: string; readonly when: string; readonly files: RegExp }[] =
  [
    {
      name: "page and styles",
      when: "at once",
      files: /^(index\.html|page\.js|style\.css|chunk.*\.js)$/,
    },
    { name: "closed frame", when: "at once", files: /^engine\.html$/ },
    { name: "room of the cells", when: "at once", files: /^room\/room\.js$/ },
    { name: "tables and rules", when: "at once (data, not code)", files: /^room\/facts\.js$/ },
    { name: "notebooks and lists", when: "at once (text, not code)", files: /^notebooks\// },
    {
      name: "library and solver",
      when: "when boards are planned",
      files: /^room\/(work\.js|highs\.wasm)$/,
    },
    { name: "Plot", when: "when a notebook names it", files: /^room\/plot\.js$/ },
    { name: "arquero", when: "when a notebook names it", files: /^room\/arquero\.js$/ },
    { name: "fonts", when: "at once", files: /^fonts\/(piazzolla|archivo)/ },
    { name: "formula face", when: "with formulas", files: /^fonts\/red-hat/ },
  ];

const kB = (count: number) => `${(count / 1000).toFixed(1)} kB`.padStart(10);

/** Bytes transferred, compressed as plain web servers do, by part. */
export async function bytes(): Promise<void> {
  const files = readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(site.length + 1));
  console.log("bytes: by part, as they are, gzip, brotli");
  let code = 0;
  for (const { name, when, files: pattern } of groups) {
    const all = files
      .filter((file) => pattern.test(file))
      .map((file) => readFileSync(join(site, file)));
    const sum = (size: (text: Buffer) => number) =>
      all.reduce((total, text) => total + size(text), 0);
    const plain = sum((text) => text.length);
    // Woff2 is compressed already.
    const font = name.includes("font") || name.includes("face");
    const zipped = font ? plain : sum((text) => gzipSync(text, { level: 9 }).length);
    const brotli = font ? plain : sum((text) => brotliCompressSync(text).length);
    if (when === "at once" && !font) code += zipped;
    console.log(`  ${name.padEnd(22)}${kB(plain)}${kB(zipped)}${kB(brotli)}  ${when}`);
  }
  console.log(
    `  code before solver, arquero and editor: ${kB(code).trim()} gzip (aim: under 250 kB)`,
  );
}
