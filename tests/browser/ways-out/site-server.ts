import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { extname, join, normalize } from "node:path";
import { out } from "../../../build/root.ts";
import { contentTypes } from "../../../build/serve.ts";

/** The built site with files of the test's own beside and in place of its files. */
export class SiteServer {
  address = "";
  /** Files by path, as `notebooks/x.md`. */
  readonly files = new Map<string, string>();
  /** What was posted to `/report`. */
  readonly reports: unknown[] = [];
  readonly #server: Server;

  constructor() {
    this.#server = createServer((request, response) => {
      const path = normalize(decodeURIComponent(new URL(`http://x${request.url}`).pathname)).slice(
        1,
      );
      if (path === "report") {
        let text = "";
        request.on("data", (part) => {
          text += part;
        });
        request.on("end", () => {
          this.reports.push(JSON.parse(text));
          response.end();
        });
        return;
      }
      const body = this.files.get(path) ?? ofSite(path === "" ? "index.html" : path);
      const type =
        contentTypes[extname(path === "" ? "index.html" : path)] ?? "application/octet-stream";
      if (body === undefined) response.writeHead(404).end("not found");
      else response.writeHead(200, { "content-type": type, "cache-control": "no-store" }).end(body);
    });
  }

  async listen(): Promise<void> {
    await new Promise<void>((done) => this.#server.listen(0, "127.0.0.1", done));
    const at = this.#server.address();
    if (typeof at === "object" && at) this.address = `http://127.0.0.1:${at.port}/`;
  }

  close(): void {
    this.#server.closeAllConnections();
    this.#server.close();
  }
}

function ofSite(path: string): Buffer | undefined {
  const file = join(out, "site", path);
  return existsSync(file) && statSync(file).isFile() ? readFileSync(file) : undefined;
}
