import { join } from "node:path";
import { buildAll } from "./build-all.ts";
import { out } from "./root.ts";
import { serveFolder } from "./serve.ts";

// `npm start [PORT]`: bundles everything and serves it.
const asked = process.argv[2] ?? process.env.PORT ?? "4848";
const port = Number(asked);
if (!Number.isInteger(port) || port < 0 || port > 65535) {
  console.error(`The port must be a whole number from 0 to 65535; received “${asked}”.`);
  process.exit(2);
}
await buildAll();
try {
  const { address } = await serveFolder(join(out, "site"), port);
  console.log(`Bedwright is at ${address} (stop with Ctrl+C)`);
} catch (error) {
  if (!(error instanceof Error && "code" in error && error.code === "EADDRINUSE")) throw error;
  console.error(`Port ${port} is taken by another program. Name another: npm start -- ${port + 1}`);
  process.exitCode = 1;
}
