import { join } from "node:path";
import { chromium } from "playwright-core";
import { buildAll } from "./build-all.ts";
import { needChromium } from "./chromium.ts";
import { out, root } from "./root.ts";
import { serveFolder } from "./serve.ts";

// `npm run picture`: the README's picture of the main notebook, as it is now.
await buildAll();
const { server, address } = await serveFolder(join(out, "site"), 0);
const browser = await chromium.launch({
  executablePath: needChromium(),
  args: ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking"],
});
const page = await browser.newPage({
  viewport: { width: 1440, height: 1250 },
  colorScheme: "light",
});
await page.goto(`${address}?notebook=rebuild.md`);
// Plans get better until none is cheaper.
await page.getByText("No cheaper plan exists").first().waitFor({ timeout: 60_000 });
await page.waitForTimeout(3000);
await page.evaluate(() => document.fonts.ready);
await page.screenshot({ path: join(root, "notebooks/rebuild.png") });
await browser.close();
server.close();
console.log("drawn: notebooks/rebuild.png");
