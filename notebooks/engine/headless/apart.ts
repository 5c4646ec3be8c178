import { spawn } from "node:child_process";
import type { Job } from "./job.ts";
import { WrongUsage } from "./usage.ts";

/** How the command line is started again in a process of its own. */
export interface Script {
  /** The bundle that is running. */
  readonly file: string;
  /** All files it reads for itself. */
  readonly reads: readonly string[];
}

/** The argument by which the script knows that it is the process apart. */
export const apartArgument = "--apart";

/** The flag that switches Node's permission model on, by Node's version. */
function permissionFlag(): string {
  const { allowedNodeEnvironmentFlags: known } = process;
  const flag = ["--permission", "--experimental-permission"].find((name) => known.has(name));
  if (flag === undefined)
    throw new WrongUsage("This Node has no permission model: take Node 20 or later.");
  return flag;
}

/**
 * Runs a job in a process that may read only the script's own files, write nothing, and start
 * nothing. It is handed all texts, so that even the notebook's own folder stays closed to it.
 *
 * @returns the number it ended with
 */
export function runApart(job: Job, { file, reads }: Script): Promise<number> {
  const readable = [...new Set([file, ...reads])].map((path) => `--allow-fs-read=${path}`);
  const flags = [permissionFlag(), ...readable, "--no-warnings"];
  const child = spawn(process.execPath, [...flags, file, apartArgument], {
    stdio: ["pipe", "inherit", "inherit"],
    // Not the caller's environment: it may hold secrets, and options that open more.
    env: {},
  });
  child.stdin.on("error", () => {});
  child.stdin.end(JSON.stringify(job));
  return new Promise((resolve, reject) => {
    child.on("error", reject);
    child.on("close", (code) => resolve(code ?? 1));
  });
}

/** Whether this process is held back as it should be. */
export function isHeldBack(): boolean {
  const { permission } = process as unknown as {
    permission?: { has(scope: string): boolean };
  };
  return permission !== undefined && !permission.has("fs.write") && !permission.has("child");
}

/** The job that was handed in. */
export async function jobFromInput(input: AsyncIterable<Buffer | string>): Promise<Job> {
  let text = "";
  for await (const part of input) text += String(part);
  return JSON.parse(text) as Job;
}
