import { createReadStream, existsSync, statSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { extname, join, normalize } from "node:path";

/** What browsers are told of a file, by the end of its name. */
export const contentTypes: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".md": "text/markdown; charset=utf-8",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
  ".svg": "image/svg+xml",
  ".csv": "text/csv; charset=utf-8",
};

/**
 * Serves a folder as a plain web server would, without special headers. Gives the server and its
 * address; port 0 takes any free one.
 */
export async function serveFolder(
  folder: string,
  port: number,
): Promise<{ server: Server; address: string }> {
  const server = createServer((request, response) => {
    const file = fileFor(request.url ?? "/", folder);
    if (file === undefined) {
      response.writeHead(404, { "content-type": "text/plain" }).end("not found");
      return;
    }
    response.writeHead(200, {
      "content-type": contentTypes[extname(file)] ?? "application/octet-stream",
    });
    // A file that goes away while it is sent ends its own answer, not the server.
    createReadStream(file)
      .on("error", () => response.destroy())
      .pipe(response);
  });
  await new Promise<void>((listening, failed) => {
    server.once("error", failed);
    server.listen(port, "127.0.0.1", listening);
  });
  const at = server.address();
  if (typeof at !== "object" || at === null) throw new Error("the server has no address");
  return { server, address: `http://127.0.0.1:${at.port}/` };
}

/** The file an address stands for; undefined where there is none or the address is broken. */
function fileFor(url: string, folder: string): string | undefined {
  const path = pathOf(url);
  if (path === undefined) return undefined;
  // `normalize` has folded every "..", so nothing above the folder can be named.
  const file = join(folder, normalize(path));
  if (!existsSync(file)) return undefined;
  if (!statSync(file).isDirectory()) return file;
  const index = join(file, "index.html");
  return existsSync(index) ? index : undefined;
}

function pathOf(url: string): string | undefined {
  try {
    return decodeURIComponent(new URL(`http://x${url}`).pathname);
  } catch {
    return undefined;
  }
}
