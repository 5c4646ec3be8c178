import { cacheOf, checkedFile, keepAll, keptFile, keptVersions } from "./offline/kept-files.ts";
import { OpenPages } from "./offline/open-pages.ts";
import type { Build, FetchEvent, HeardEvent, WorkerScope } from "./offline/worker-types.ts";

// Serves the site without a network. Each build has a cache of its own; a page gets the files of the
// build it began with for as long as it is open, whatever was fetched since.

const worker = globalThis as unknown as WorkerScope & { readonly bedwrightBuild: Build };
const { bedwrightBuild: build } = worker;
const { scope } = worker.registration;
const pages = new OpenPages(scope);

worker.addEventListener("install", (event) => event.waitUntil(keepAll(build, scope)));

worker.addEventListener("activate", (event) => event.waitUntil(takeOver()));

worker.addEventListener("fetch", (event) => {
  const path = pathOf(event.request.url);
  if (event.request.method !== "GET" || path === undefined) return;
  event.respondWith(
    event.request.mode === "navigate" ? navigated(path, event) : asked(path, event),
  );
});

worker.addEventListener("message", (event) => {
  const { kind, version } = event.data as { readonly kind?: unknown; readonly version?: unknown };
  if (kind === "use") event.waitUntil(worker.skipWaiting());
  if (kind === "mine") event.waitUntil(pageSays(version, event));
});

async function takeOver(): Promise<void> {
  await pages.takeOver(build.version, await keptVersions());
  await clearAway();
}

/** A page that was fetched from the network comes in here, where it is of the same build. */
async function pageSays(version: unknown, { source }: HeardEvent): Promise<void> {
  if (source === null || (await pages.versionOf(source.id)) !== undefined) return;
  if (version !== build.version) return source.postMessage({ kind: "newer" });
  await pages.add(source.id, build.version);
  await worker.clients.claim();
}

async function navigated(path: string, event: FetchEvent): Promise<Response> {
  if (path === "engine.html") return closedFrame(event.request.url);
  if (path !== "" && path !== "index.html") return fileOf(path, build.version, event);
  if (event.resultingClientId !== "") await pages.add(event.resultingClientId, build.version);
  event.waitUntil(clearAway());
  return fileOf("index.html", build.version, event);
}

/**
 * The closed frame. A frame that its page has sandboxed never asks here, so this one is sandboxed by
 * its own answer; the page says which version it is.
 */
async function closedFrame(address: string): Promise<Response> {
  const version = new URL(address).searchParams.get("v") ?? build.version;
  const kept = await keptFile("engine.html", version, scope);
  if (kept === undefined) return new Response("not found", { status: 404 });
  const headers = new Headers(kept.headers);
  headers.set("content-security-policy", "sandbox allow-scripts");
  return new Response(await kept.arrayBuffer(), { headers });
}

async function asked(path: string, event: FetchEvent): Promise<Response> {
  const version = await pages.versionOf(event.clientId);
  // A page of no known version came from the network, and goes on with it.
  return version === undefined ? fetch(event.request) : fileOf(path, version, event);
}

async function fileOf(path: string, version: string, { request }: FetchEvent): Promise<Response> {
  const kept = await keptFile(path, version, scope);
  if (kept) return kept;
  const hash = build.files[path];
  // What an earlier build had not, or has no more, is not to be had from a later one.
  if (version !== build.version) return new Response("not found", { status: 404 });
  try {
    return hash === undefined ? await fetch(request) : await checkedFile([path, hash], scope);
  } catch {
    return new Response("not to be had without a network", { status: 504 });
  }
}

/** Deletes the files of past versions that no open page has. */
async function clearAway(): Promise<void> {
  const open = await worker.clients.matchAll({ type: "window", includeUncontrolled: true });
  const inUse = await pages.onlyOpen(new Set(open.map(({ id }) => id)));
  for (const version of await pages.past())
    if (version !== build.version && !inUse.has(version)) await caches.delete(cacheOf(version));
}

/** The path below the site; undefined for anything elsewhere. */
function pathOf(address: string): string | undefined {
  const { origin, pathname } = new URL(address);
  const base = new URL(scope);
  if (origin !== base.origin || !pathname.startsWith(base.pathname)) return undefined;
  try {
    return decodeURIComponent(pathname.slice(base.pathname.length));
  } catch {
    return undefined;
  }
}
