import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";

const site = join(process.cwd(), "build/out/site");

/** What a visit transfers, by part; `when` says what asks for it. */
interface Group {
  readonly name: string;
  readonly when: string;
  readonly files?: RegExp;
  /** These, and the scripts that each imports, as far as no group before has them. */
  readonly scripts?: RegExp;
}

const groups: readonly Group[] = [
  {
    name: "page and styles",
    when: "at once",
    files: /^(index\.html|style\.css)$/,
    scripts: /^page\.js$/,
  },
  {
    name: "editor",
    when: "when a cell of one's own is opened",
    scripts: /^(writing|open-slip|cell-slip|words-slip)-.*\.js$/,
  },
  {
    name: "sharing and links",
    when: "when something is shared, or a link opened",
    scripts: /^(share-pane|open-link)-.*\.js$/,
  },
  {
    name: "reference",
    when: "when it is asked for",
    files: /^reference\.json$/,
    scripts: /^open-reference-.*\.js$/,
  },
  {
    name: "service worker",
    when: "after the first answers; then all the rest, for another day",
    files: /^sw\.js$/,
  },
  {
    name: "other parts of the page",
    when: "each when it is asked for",
    scripts: /^(?!sw\.js)[^/]+\.js$/,
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
  const counted = new Set<string>();
  for (const group of groups) {
    const { name, when } = group;
    const own = filesOf(group, files).filter((file) => !counted.has(file));
    for (const file of own) counted.add(file);
    const all = own.map((file) => readFileSync(join(site, file)));
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

function filesOf(group: Group, files: readonly string[]): readonly string[] {
  const plain = files.filter((file) => group.files?.test(file));
  const scripts = files.filter((file) => group.scripts?.test(file));
  for (const script of scripts)
    for (const more of importedBy(script)) if (!scripts.includes(more)) scripts.push(more);
  return [...plain, ...scripts];
}

/** The scripts that one needs before it can run: what it imports in so many words, not on demand. */
function importedBy(script: string): readonly string[] {
  const text = readFileSync(join(site, script), "utf8");
  return [...text.matchAll(/(?:from|import)"\.\/([^"]+\.js)"/g)].map(([, name = ""]) => name);
}
