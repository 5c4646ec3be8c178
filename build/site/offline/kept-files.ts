import type { Build } from "./worker-types.ts";

const prefix = "bedwright-files-";

export const cacheOf = (version: string) => `${prefix}${version}`;

/**
 * Keeps every file of a build, each checked by its hash: all of them or none. What an earlier build
 * had the same is taken over from there.
 */
export async function keepAll({ version, files }: Build, scope: string): Promise<void> {
  const name = cacheOf(version);
  const wasThere = await caches.has(name);
  const cache = await caches.open(name);
  const waiting = Object.entries(files);
  const take = async () => {
    for (let next = waiting.shift(); next; next = waiting.shift())
      await cache.put(addressOf(next[0], scope), await checkedFile(next, scope));
  };
  try {
    await Promise.all(Array.from({ length: 4 }, take));
  } catch (error) {
    waiting.length = 0;
    if (!wasThere) await caches.delete(name);
    throw error;
  }
}

/** A file of the build from what is kept or from the network; one with another hash is refused. */
export async function checkedFile(
  [path, hash]: readonly [path: string, hash: string],
  scope: string,
): Promise<Response> {
  const address = addressOf(path, scope);
  const kept = await caches.match(address);
  if (kept && (await hashOf(await kept.clone().arrayBuffer())) === hash) return kept;
  const fetched = await fetch(address, { cache: "no-cache" });
  const bytes = await fetched.arrayBuffer();
  if (!fetched.ok || (await hashOf(bytes)) !== hash)
    throw new Error(`${path} is not the file of this build`);
  return new Response(bytes, {
    headers: { "content-type": fetched.headers.get("content-type") ?? "application/octet-stream" },
  });
}

export async function keptFile(
  path: string,
  version: string,
  scope: string,
): Promise<Response | undefined> {
  const name = cacheOf(version);
  // Asked for by name: to open it would make it.
  return (await caches.match(addressOf(path, scope), { cacheName: name })) ?? undefined;
}

/** The versions of which files are kept. */
export async function keptVersions(): Promise<readonly string[]> {
  const names = await caches.keys();
  return names.filter((name) => name.startsWith(prefix)).map((name) => name.slice(prefix.length));
}

function addressOf(path: string, scope: string): string {
  return new URL(path.split("/").map(encodeURIComponent).join("/"), scope).href;
}

async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...hash].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
