import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

/** The browser of the system's packages, or undefined. */
export function findChromium(): string | undefined {
  const named = process.env.CHROMIUM;
  if (named !== undefined && existsSync(named)) return named;
  return places.find((place) => existsSync(place));
}

/** Finds Chromium, installing it with the system's package manager where it is missing. */
export function needChromium(): string {
  const found = findChromium();
  if (found) return found;
  console.log("Chromium is missing: installing it with apt-get (set CHROMIUM to use another).");
  const root = process.getuid?.() === 0;
  for (const args of [
    ["apt-get", "update", "-qq"],
    ["apt-get", "install", "-y", "-qq", "chromium", "poppler-utils"],
  ]) {
    const [command = "", ...rest] = root ? args : ["sudo", ...args];
    const done = spawnSync(command, rest, {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
    if (done.status !== 0)
      throw new Error(
        "Chromium could not be installed. Install it by hand and name it in the variable CHROMIUM.",
      );
  }
  const installed = findChromium();
  if (!installed) throw new Error("apt-get installed no Chromium in a place this script knows.");
  return installed;
}
