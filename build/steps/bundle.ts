import { type BuildOptions, build } from "esbuild";
import { root } from "../root.ts";
import { madeModules } from "./made.ts";

const plugin = madeModules();

/** Bundles one script for the browser and gives its text. */
export async function bundleText(entry: string, options: BuildOptions = {}): Promise<string> {
  const result = await build({
    entryPoints: [entry],
    absWorkingDir: root,
    bundle: true,
    write: false,
    minify: true,
    format: "iife",
    platform: "browser",
    target: ["es2023"],
    legalComments: "none",
    charset: "utf8",
    logLevel: "warning",
    ...options,
    plugins: [plugin, ...(options.plugins ?? [])],
  });
  const [file] = result.outputFiles ?? [];
  if (!file) throw new Error(`${entry} gave nothing`);
  return file.text;
}

/** Bundles the command line for Node into one file. */
export async function bundleForNode(entry: string, outfile: string): Promise<void> {
  await build({
    entryPoints: [entry],
    absWorkingDir: root,
    outfile,
    bundle: true,
    format: "esm",
    platform: "node",
    target: ["node20"],
    legalComments: "none",
    plugins: [plugin],
    logLevel: "warning",
  });
}
