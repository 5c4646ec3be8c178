import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

/** The browser of the system's packages, or the one that `CHROMIUM` names; undefined for neither. */
function findChromium(): string | undefined {
  const named = process.env.CHROMIUM;
  if (named !== undefined && existsSync(named)) return named;
  return places.find((place) => existsSync(place));
}

/** Finds Chromium, installing it with the system's package manager where it is missing. */
export function needChromium(): string {
  const found = findChromium();
  if (found) return found;
  install("chromium", "Set the variable CHROMIUM to use another.");
  const installed = findChromium();
  if (!installed) throw new Error("apt-get installed no Chromium in a place this script knows.");
  return installed;
}

/** Sees to `pdftotext`, with which the tests read printed pages. */
export function needPdfReader(): void {
  if (spawnSync("pdftotext", ["-v"], { stdio: "ignore" }).error === undefined) return;
  install("poppler-utils", "It has pdftotext, which the tests of printed pages call.");
}

function install(pack: string, note: string): void {
  console.log(`${pack} is missing: installing it with apt-get. ${note}`);
  const isRoot = process.getuid?.() === 0;
  for (const args of [
    ["apt-get", "update", "-qq"],
    ["apt-get", "install", "-y", "-qq", pack],
  ]) {
    const [command = "", ...rest] = isRoot ? args : ["sudo", ...args];
    const done = spawnSync(command, rest, {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
    if (done.status !== 0)
      throw new Error(`${pack} could not be installed. Install it by hand. ${note}`);
  }
}
