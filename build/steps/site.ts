import { createHash } from "node:crypto";
import { cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { framePage, pagePolicy } from "../../notebooks/engine/worker/policy.ts";
import { packReference } from "../docs/pack.ts";
import { out, root } from "../root.ts";
import { bundleText } from "./bundle.ts";
import { reference, ruleDocs, slimDataFiles, sourceTitles } from "./made.ts";
import { buildOffline } from "./offline.ts";
import { withoutPlanner } from "./without-planner.ts";

const site = join(out, "site");

const fontFiles = {
  "piazzolla.woff2": "piazzolla/files/piazzolla-latin-opsz-normal.woff2",
  "archivo.woff2": "archivo/files/archivo-latin-wdth-normal.woff2",
  "red-hat-mono.woff2": "red-hat-mono/files/red-hat-mono-latin-wght-normal.woff2",
} as const;

/**
 * Builds the static site into `build/out/site`: the page, the closed frame, the scripts of the
 * workers as files the page hands in, fonts, notebooks, the solver.
 */
export async function buildSite(): Promise<void> {
  rmSync(site, { recursive: true, force: true });
  for (const folder of ["fonts", "notebooks", "room"])
    mkdirSync(join(site, folder), { recursive: true });
  await Promise.all([buildPage(), buildFrame(), buildRoom()]);
  copyFonts();
  copyNotebooks();
  cpSync(join(root, "node_modules/highs/build/highs.wasm"), join(site, "room/highs.wasm"));
  writeFileSync(join(site, "reference.json"), packReference(reference()));
  writeFileSync(join(site, "index.html"), indexPage());
  await buildOffline(site);
}

async function buildPage(): Promise<void> {
  await build({
    entryPoints: { page: join(root, "build/site/page.ts") },
    absWorkingDir: root,
    outdir: site,
    bundle: true,
    minify: true,
    format: "esm",
    splitting: true,
    platform: "browser",
    target: ["es2023"],
    legalComments: "none",
    charset: "utf8",
    alias: { "linkify-it": join(root, "build/site/no-link-finder.ts") },
    logLevel: "warning",
  });
  await build({
    entryPoints: { style: join(root, "notebooks/engine/page/style.css") },
    outdir: site,
    bundle: true,
    minify: true,
    external: ["fonts/*"],
    logLevel: "warning",
  });
}

async function buildFrame(): Promise<void> {
  const script = (await bundleText("build/site/frame.ts")).trim();
  if (/<\/script/i.test(script)) throw new Error("the frame's script would end its own element");
  const hash = `sha256-${createHash("sha256").update(script).digest("base64")}`;
  writeFileSync(join(site, "engine.html"), framePage(script, hash));
}

/** The room's parts: the room itself, and what is only sent where a notebook names it. */
async function buildRoom(): Promise<void> {
  const facts = JSON.stringify({ data: slimDataFiles(), rules: ruleDocs() });
  writeFileSync(join(site, "room/facts.js"), `globalThis.bedwrightFacts=${facts}`);
  for (const name of ["room", "plot", "arquero", "work"])
    writeFileSync(
      join(site, "room", `${name}.js`),
      // The solver's loader names modules of Node, which it asks for only there.
      await bundleText(`build/site/${name}.ts`, {
        external: ["node:*"],
        plugins: name === "room" ? [withoutPlanner] : [],
      }),
    );
}

function copyFonts(): void {
  for (const [name, from] of Object.entries(fontFiles))
    cpSync(join(root, "node_modules/@fontsource-variable", from), join(site, "fonts", name));
}

/** The notebooks in the shelf's order, with the sentence the shelf says of each. */
const shelf: readonly { readonly file: string; readonly about: string }[] = [
  { file: "rebuild.md", about: "What to buy, how to saw it, how much soil, and what it all costs" },
  { file: "one-bed.md", about: "The same for a single bed, with a few entries and no table" },
  {
    file: "soil.md",
    about: "How much to order, what sinks and rots away, and what each spring takes",
  },
  {
    file: "boards.md",
    about: "Any list of pieces: which boards to buy, where, and how to saw them",
  },
  { file: "garden.md", about: "Your beds, boards kept, yards and prices, written down once" },
];

function copyNotebooks(): void {
  const folder = join(root, "notebooks");
  const files = readdirSync(folder).filter((file) => file.endsWith(".md"));
  for (const file of files) cpSync(join(folder, file), join(site, "notebooks", file));
  const texts = files.map((file) => readFileSync(join(folder, file), "utf8"));
  const used = (file: string) => texts.some((text) => text.includes(`\`\`\`uses ${file}\n`));
  const list = shelf.map(({ file, about }) => {
    const text = readFileSync(join(folder, file), "utf8");
    return { file, about, title: /^# (.+)$/m.exec(text)?.[1] ?? file, used: used(file) };
  });
  const titles = Object.entries(sourceTitles()).map(([id, title]) => [id, { title }]);
  writeJson("notebooks/list.json", list);
  writeJson("notebooks/sources.json", Object.fromEntries(titles));
}

function writeJson(file: string, value: unknown): void {
  writeFileSync(join(site, file), JSON.stringify(value));
}

function indexPage(): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${pagePolicy()}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="version" content="">
<title>Bedwright</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="style.css">
<script type="module" src="page.js"></script>
</head>
<body></body>
</html>
`;
}
