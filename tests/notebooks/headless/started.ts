import { spawn } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { root } from "../../../build/root.ts";
import { bundleForNode } from "../../../build/steps/bundle.ts";

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** A package as it is installed: the bundle with the solver beside it, and notebooks of our own. */
export interface Installed {
  readonly folder: string;
  run(args: readonly string[]): Promise<Ended>;
  /** The same where nobody reads what it prints. */
  runUnread(args: readonly string[]): Promise<Omit<Ended, "out">>;
  write(file: string, text: string): string;
  remove(): void;
}

export async function install(notebooks: Readonly<Record<string, string>>): Promise<Installed> {
  const folder = mkdtempSync(join(tmpdir(), "bedwright-"));
  const script = join(folder, "package/build/out/cli/bedwright.mjs");
  await bundleForNode("build/cli/bedwright.ts", script);
  cpSync(join(root, "node_modules/highs/build/highs.wasm"), join(dirname(script), "highs.wasm"));
  const write = (file: string, text: string) => {
    const path = join(folder, file);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    return path;
  };
  for (const [file, text] of Object.entries(notebooks)) write(`package/notebooks/${file}`, text);
  mkdirSync(join(folder, "home"));
  return {
    folder,
    write,
    run: (args) => ended(script, args, join(folder, "home")),
    runUnread: (args) => unread(script, args, join(folder, "home")),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

function ended(script: string, args: readonly string[], cwd: string): Promise<Ended> {
  const child = spawn(process.execPath, [script, ...args], {
    cwd,
    stdio: ["ignore", "pipe", "pipe"],
  });
  let out = "";
  let err = "";
  child.stdout.on("data", (part) => {
    out += String(part);
  });
  child.stderr.on("data", (part) => {
    err += String(part);
  });
  return new Promise((resolve) => {
    child.on("close", (code) => resolve({ code, out, err }));
  });
}

function unread(script: string, args: readonly string[], cwd: string): Promise<Omit<Ended, "out">> {
  const child = spawn(process.execPath, [script, ...args], {
    cwd,
    stdio: ["ignore", "pipe", "pipe"],
  });
  child.stdout.destroy();
  let err = "";
  child.stderr.on("data", (part) => {
    err += String(part);
  });
  return new Promise((resolve) => {
    child.on("close", (code) => resolve({ code, err }));
  });
}
