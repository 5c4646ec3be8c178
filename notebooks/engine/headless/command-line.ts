import type { Host } from "../types/index.ts";
import { apartArgument, isHeldBack, jobFromInput, runApart, type Script } from "./apart.ts";
import { readArguments } from "./arguments.ts";
import { type Job, makeJob } from "./job.ts";
import { locate } from "./locate.ts";
import { runJob } from "./run-job.ts";
import { placeToSave, saveNotebook } from "./save.ts";
import { usageText, WrongUsage, whyTrust } from "./usage.ts";

/** What the command line is put together from. */
export interface CommandLine {
  /** Arguments after the script's name. */
  readonly argv: readonly string[];
  readonly makeHost: () => Host;
  /** The folder of the notebooks that come with the package. */
  readonly shipped: string;
  readonly script: Script;
  readonly cwd: string;
  /** ISO date of the clock. */
  readonly today: string;
  readonly input: AsyncIterable<Buffer | string>;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Settles when nothing is left that could still come, as Node's `beforeExit`. */
  readonly idle: Promise<unknown>;
}

/** Runs the command line and gives the number it ends with: 0, 1 or 2. */
export async function commandLine(line: CommandLine): Promise<number> {
  try {
    return line.argv[0] === apartArgument ? await apart(line) : await asked(line);
  } catch (error) {
    if (!(error instanceof WrongUsage)) throw error;
    line.err(`${error.message}\n\n${usageText}\n`);
    return 2;
  }
}

async function asked(line: CommandLine): Promise<number> {
  const wanted = readArguments(line.argv);
  if (wanted === "help") {
    line.out(`${usageText}\n`);
    return 0;
  }
  const located = await locate(wanted.notebook, line.cwd, line.shipped);
  if (!located.shipped && !wanted.trust) {
    line.err(`${wanted.notebook} does not come with the package.\n${whyTrust}\n`);
    return 2;
  }
  const job = await makeJob(wanted, located, line);
  const path = wanted.save === undefined ? "" : await placeToSave(wanted.save, line.cwd, job);
  const code = await (located.shipped ? finished(job, line) : runApart(job, line.script));
  if (path === "" || code === 2) return code;
  await saveNotebook(path, job, line.makeHost());
  line.err(`Saved as ${path}.\n`);
  return code;
}

async function apart(line: CommandLine): Promise<number> {
  if (!isHeldBack()) throw new WrongUsage(`${apartArgument} is for the command line itself.`);
  return finished(await jobFromInput(line.input), line);
}

async function finished(job: Job, { makeHost, idle, out, err }: CommandLine): Promise<number> {
  const printed = await runJob(job, makeHost(), idle);
  if (printed.out !== "") out(`${printed.out}\n`);
  if (printed.err !== "") err(`${printed.err}\n`);
  return printed.code;
}
