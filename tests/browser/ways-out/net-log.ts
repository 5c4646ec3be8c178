import { readFileSync } from "node:fs";
import { domain } from "./listeners.ts";

/** The flags that make Chromium write down all that its network does. */
export const netLogFlags = (file: string) => [
  `--log-net-log=${file}`,
  "--net-log-capture-mode=Everything",
];

/**
 * The names of probes that Chromium's own log of its network holds: whoever was looked up, asked or
 * connected to. The texts of the notebooks themselves are in it only as encoded bytes.
 */
export function namesInNetLog(file: string): ReadonlySet<string> {
  const text = readFileSync(file, "latin1");
  const names = new Set<string>();
  for (let at = text.indexOf(domain); at >= 0; at = text.indexOf(domain, at + 1)) {
    const name = /([\w-]+)\.$/.exec(text.slice(Math.max(0, at - 60), at))?.[1];
    if (name !== undefined) names.add(name);
  }
  return names;
}
