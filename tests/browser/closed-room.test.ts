import { describe, expect, it } from "vitest";
import { again, cell, field, openNotebook, useSite } from "./harness.ts";

const site = useSite();

const runaway = `# A runaway

\`\`\`js cell turns "Turns"
countEntry("1", { max: 100 })
\`\`\`

\`\`\`js cell other "Other"
turns + 1
\`\`\`

\`\`\`js cell spin "The spinning one" pinned
let n = 0;
while (turns > 5) n += 1;
return n;
\`\`\`

\`\`\`js cell rests "Rests on it"
spin + 1
\`\`\`
`;

const hostile = `# Hostile <script>document.title = "taken"</script>

A [link](javascript:alert(1)), a [file](file:///etc/passwd), <b onclick="x()">markup</b>,
![a picture](https://elsewhere.invalid/pixel.png) and \`fig probe\`.

\`\`\`js cell probe "What is left"
const names = ["fetch", "XMLHttpRequest", "WebSocket", "importScripts", "Worker", "indexedDB", "caches", "document", "RTCPeerConnection", "EventSource"];
const reach = [].constructor.constructor("return this")();
const got = names.filter((name) => reach[name] !== undefined);
return got.length === 0 ? "nothing left" : got.join(", ");
\`\`\`

\`\`\`js cell drawn "A drawing"
return { kind: "drawing", title: "A drawing", alternative: "words", forms: [{ from: 0, tree: [1, "svg", { viewBox: "0 0 10 10", onload: "x()", id: "page" }, [
  [1, "a", { href: "https://elsewhere.invalid/" }, ["a link"]],
  [1, "script", {}, ["document.title = 'taken'"]],
  [1, "image", { href: "https://elsewhere.invalid/i.png" }, []],
  [1, "use", { href: "https://elsewhere.invalid/u.svg#x" }, []],
  [1, "foreignObject", {}, [[0, "iframe", { src: "https://elsewhere.invalid/" }, []]]],
  [1, "style", {}, ["* { display: none }"]],
  [1, "rect", { width: "5", height: "5", fill: "url(https://elsewhere.invalid/f)", style: "background: url(https://elsewhere.invalid/s); fill: red", onclick: "x()" }, []],
  [0, "img", { src: "https://elsewhere.invalid/p.png" }, []],
  [0, "figure", {}, [[0, "h2", {}, ["A heading"]], [0, "div", {}, ["kept"]]]],
  [0, "div", { class: "tally", style: "position: fixed; inset: 0" }, ["over the page"]],
]] }] };
\`\`\`
`;

describe("a cell without an end", again, () => {
  it("is named, stopped at once, marked, and leaves the rest alive", async () => {
    const page = await site.page({ notebooks: { "runaway.md": runaway } });
    await openNotebook(page, site, "runaway.md");
    await expect.poll(() => cell(page, "runaway.md", "spin").locator(".n").textContent()).toBe("0");
    await field(page, "turns", "runaway.md").fill("9");
    const notice = page.getByRole("alert");
    await notice.waitFor({ timeout: 6_000 });
    expect(await notice.textContent()).toContain("The spinning one");

    // The page itself is alive: a key is heard at once.
    const started = Date.now();
    await field(page, "turns", "runaway.md").fill("8");
    expect(Date.now() - started).toBeLessThan(500);

    const took = await page.getByRole("button", { name: "Stop it" }).evaluate(
      (button) =>
        new Promise<number>((done) => {
          const started = performance.now();
          const notice = button.closest<HTMLElement>(".roomnotice");
          new MutationObserver((_, observer) => {
            if (!notice?.hidden) return;
            observer.disconnect();
            done(performance.now() - started);
          }).observe(notice ?? button, { attributes: true });
          (button as HTMLButtonElement).click();
        }),
    );
    expect(took).toBeLessThan(500);
    await cell(page, "runaway.md", "spin").locator(".broken").waitFor();
    expect(await notice.isVisible()).toBe(false);
    expect(await cell(page, "runaway.md", "spin").textContent()).toContain("was stopped");
    expect(await cell(page, "runaway.md", "rests").textContent()).toContain("waits for");
    await expect
      .poll(() => cell(page, "runaway.md", "other").locator(".n").textContent())
      .toBe("9");
    expect(await field(page, "turns", "runaway.md").inputValue()).toBe("8");

    // What it takes can be changed without its running away again, until it is tried again.
    await field(page, "turns", "runaway.md").fill("2");
    await expect
      .poll(() => cell(page, "runaway.md", "other").locator(".n").textContent())
      .toBe("3");
    await page.getByRole("button", { name: "Try it again" }).click();
    await expect.poll(() => cell(page, "runaway.md", "spin").locator(".n").textContent()).toBe("0");
    await page.context().close();
  }, 60_000);

  it("is ended after fifteen seconds without anybody's help", async () => {
    const page = await site.page({ notebooks: { "runaway.md": runaway } });
    await openNotebook(page, site, "runaway.md");
    await field(page, "turns", "runaway.md").fill("9");
    const notice = page.getByRole("alert");
    await notice.filter({ hasText: "was ended" }).waitFor({ timeout: 25_000 });
    expect(await notice.textContent()).toContain("The spinning one");
    await expect
      .poll(() => cell(page, "runaway.md", "other").locator(".n").textContent())
      .toBe("10");
    await page.context().close();
  }, 60_000);
});

describe("a stranger's notebook", again, () => {
  it("finds no network, no storage and no page in the room", async () => {
    const page = await site.page({ notebooks: { "hostile.md": hostile } });
    await openNotebook(page, site, "hostile.md");
    await expect
      .poll(() => cell(page, "hostile.md", "probe").textContent())
      .toContain("nothing left");
    await page.context().close();
  });

  it("puts no script, no address and no picture into the page", async () => {
    const page = await site.page({ notebooks: { "hostile.md": hostile } });
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await openNotebook(page, site, "hostile.md");
    await cell(page, "hostile.md", "drawn").locator("svg").waitFor();
    const bad = await page.locator("main").evaluate((main) =>
      [...main.querySelectorAll("*")].flatMap((element) => {
        const tag = /^(script|iframe|img|image|use|foreignObject|object|embed|link|meta|form)$/i;
        const found = [...element.attributes].filter(
          ({ name, value }) =>
            /^on|^src|^xlink/.test(name) ||
            (name === "href" && !/^(https?:|[?#])/.test(value)) ||
            /url\(http/.test(value),
        );
        return tag.test(element.localName) || found.length > 0
          ? [element.outerHTML.slice(0, 100)]
          : [];
      }),
    );
    expect(bad).toEqual([]);
    expect(await cell(page, "hostile.md", "drawn").locator("a").count()).toBe(0);
    expect(await cell(page, "hostile.md", "drawn").locator("style").count()).toBe(0);
    expect(await page.locator("main#page").count()).toBe(1);
    expect(await cell(page, "hostile.md", "drawn").locator("h2").count()).toBe(0);
    expect(await page.title()).toContain("Bedwright");
    const over = await cell(page, "hostile.md", "drawn").locator(".tally").boundingBox();
    const drawn = await cell(page, "hostile.md", "drawn").locator(".drawn").boundingBox();
    expect(over === null || over.height <= (drawn?.height ?? 0) + 1).toBe(true);
    expect(
      asked.filter((url) => !url.startsWith(site.address) && !/^(blob|data):/.test(url)),
    ).toEqual([]);
    await page.context().close();
  });
});

describe("the frame", again, () => {
  it("starts nowhere but inside its page", async () => {
    const page = await site.page();
    const errors: string[] = [];
    page.on("pageerror", (error) => errors.push(error.message));
    await page.goto(`${site.address}engine.html`);
    await expect.poll(() => errors.join()).toContain("only works as the closed frame");
    await page.context().close();
  });

  it("has an opaque origin and scripts alone", async () => {
    const page = await site.page({ notebooks: { "runaway.md": runaway } });
    await openNotebook(page, site, "runaway.md");
    expect(await page.locator("iframe").getAttribute("sandbox")).toBe("allow-scripts");
    const frame = page.frames().find((one) => new URL(one.url()).pathname.endsWith("/engine.html"));
    expect(await frame?.evaluate(() => self.origin)).toBe("null");
    await page.context().close();
  });
});

describe("the page", again, () => {
  it("compiles no text, whoever asks", async () => {
    const page = await site.page();
    await page.goto(site.address);
    await page.locator(".books").waitFor();
    // Later, as the page's own scripts would: the debugger's own evaluation is exempt.
    const outcome = await page.evaluate(
      () =>
        new Promise((done) => {
          setTimeout(() => {
            try {
              done(String(new Function("return 1")()));
            } catch (error) {
              done((error as Error).name);
            }
          }, 50);
        }),
    );
    expect(outcome).toBe("EvalError");
    await page.context().close();
  });
});
