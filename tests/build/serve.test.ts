import { mkdtempSync, writeFileSync } from "node:fs";
import type { Server } from "node:http";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveFolder } from "../../build/serve.ts";

let server: Server;
let address: string;

beforeAll(async () => {
  const folder = mkdtempSync(join(tmpdir(), "bedwright-"));
  writeFileSync(join(folder, "index.html"), "the page");
  ({ server, address } = await serveFolder(folder, 0));
});
afterAll(() => server.close());

/** Asks for a path as it is written, which `fetch` would tidy up first. */
function asked(path: string): Promise<number | undefined> {
  return new Promise((answered, failed) => {
    const { hostname, port } = new URL(address);
    request({ hostname, port, path }, (response) => {
      response.resume();
      answered(response.statusCode);
    })
      .once("error", failed)
      .end();
  });
}

describe("serving a folder", () => {
  it("gives the page at the folder's address", async () => {
    expect(await (await fetch(address)).text()).toBe("the page");
  });

  it.each(["/%", "/%E0%A4%A", "/a%00b", "/../../package.json", "/%2e%2e/%2e%2e/package.json"])(
    "says that %s is not there, and goes on",
    async (path) => {
      expect(await asked(path)).toBe(404);
      expect(await asked("/")).toBe(200);
    },
  );

  it("refuses a port that is taken", async () => {
    await expect(serveFolder(".", Number(new URL(address).port))).rejects.toThrow("EADDRINUSE");
  });
});
