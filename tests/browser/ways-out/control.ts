import MarkdownIt from "markdown-it";
import { type Aim, aimOf, bodyOf, type Probe, prosesOf, treesOf } from "./read-probes.ts";

/**
 * The page of the control run: it tries every probe with the walls taken down, in a worker of its own, in
 * a frame's window, or as markup in a frame. It has no policy and takes nothing away. What ran writes
 * its name into `taken`; what gave "got" is in `said`. `done` is set at the end.
 */
export function controlPage(probes: readonly Probe[], aims: ReadonlyMap<string, Aim>): string {
  const tries = probes.map((probe) => {
    const aim = aimOf(aims, probe);
    const { name, part, control } = probe;
    if (part === "Prose") return { name, control, html: loose(prosesOf(probe, aim).join("\n\n")) };
    if (part === "Drawings") return { name, control, trees: treesOf(probe, aim) };
    return { name, control, body: bodyOf(probe, aim) };
  });
  // In a script element a text must not close the element.
  const data = JSON.stringify(tries).replaceAll("<", "\\u003c");
  return `<!doctype html><meta charset="utf-8"><title>Control</title><link rel="icon" href="data:,"><body><script>
window.taken = []; window.said = {};
(${run.toString()})(${data}).then(() => { window.done = true; });
</script>`;
}

/** The service worker of the control run, which needs a file. */
export const controlServiceWorker = "/* nothing */";

/** Prose as one would draw it who has no wall: raw markup goes in, every address is taken. */
function loose(text: string): string {
  const markdown = new MarkdownIt("commonmark", { html: true });
  markdown.validateLink = () => true;
  return markdown.render(text);
}

interface Try {
  readonly name: string;
  readonly control: string;
  readonly html?: string;
  readonly trees?: string;
  readonly body?: string;
}

/** Runs in the page: it must stand alone. */
async function run(tries: readonly Try[]): Promise<void> {
  const said = (window as unknown as { said: Record<string, string> }).said;
  type Tree = string | [number, string, Record<string, string>, Tree[]];
  const quoted = (text: string) =>
    text.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;");
  const markup = (tree: Tree): string => {
    if (typeof tree === "string") return tree;
    const [, tag, attributes, children] = tree;
    const pairs = Object.entries(attributes).map(([key, value]) => ` ${key}="${quoted(value)}"`);
    return `<${tag}${pairs.join("")}>${children.map(markup).join("")}</${tag}>`;
  };
  const loaded = (made: HTMLIFrameElement) =>
    new Promise((done) => {
      made.addEventListener("load", done, { once: true });
      setTimeout(done, 3_000);
    });
  const frame = async (name: string) => {
    const made = document.createElement("iframe");
    made.dataset.name = name;
    made.src = "/blank.html";
    document.body.append(made);
    await loaded(made);
    return made;
  };
  const written = async (name: string, html: string) => {
    const { contentDocument: page } = await frame(name);
    page?.open();
    page?.write(`<!doctype html><body>${html}</body>`);
    page?.close();
  };
  await Promise.all(
    tries.map(async ({ name, control, html, trees, body }) => {
      if (body !== undefined && control === "worker") {
        const script = `const scope = globalThis; (async () => { ${body} })().then((text) => postMessage(text), (error) => postMessage(String(error)));`;
        const worker = new Worker(URL.createObjectURL(new Blob([script])));
        worker.onmessage = ({ data }) => {
          said[name] ??= String(data);
        };
      } else if (body !== undefined) {
        const made = await frame(name);
        const { Function: Made } = made.contentWindow as unknown as typeof globalThis;
        const tried = Made("scope", `return (async () => { ${body} })()`)(made.contentWindow);
        tried.then(
          (text: string) => {
            said[name] = text;
          },
          (error: unknown) => {
            said[name] = String(error);
          },
        );
      } else if (trees !== undefined) {
        const made = Function(`return ${trees}`)() as Tree[];
        const inSvg = made.some((tree) => typeof tree !== "string" && tree[0] === 1);
        const inner = made.map(markup).join("");
        await written(name, inSvg ? `<svg viewBox="0 0 99 99" width="99">${inner}</svg>` : inner);
      } else await written(name, html ?? "");
    }),
  );
}
