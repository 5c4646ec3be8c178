import { readFileSync } from "node:fs";

/** One way out, as `probes.md` has it. */
export interface Probe {
  readonly name: string;
  readonly part: "Cells" | "Drawings" | "Prose";
  readonly kind: string;
  /** Where the control run tries it. */
  readonly control: "worker" | "window" | "page";
  readonly tries: string;
  readonly code: string;
}

/** The addresses a probe calls: each has listeners of its own, so that whatever comes has a name. */
export interface Aim {
  /** Host and port by number, where HTTP, TCP and UDP are listened at. */
  readonly at: string;
  /** A name that must be looked up, with the same port. */
  readonly host: string;
}

export const urlsOf = ({ at, host }: Aim) => [`http://${at}/x`, `http://${host}/x`] as const;

export function readProbes(): readonly Probe[] {
  const text = readFileSync(new URL("probes.md", import.meta.url), "utf8");
  return text.split(/^## /m).flatMap((part) => {
    const [title = "", ...probes] = part.split(/^### /m);
    return probes.map((probe) => readProbe(title.trim() as Probe["part"], probe));
  });
}

function readProbe(part: Probe["part"], text: string): Probe {
  const [name = "", head = "", ...code] = text.trim().split("\n");
  const [kind = "", control = "", tries = ""] = head.split(" | ");
  if (!/^(worker|window|page)$/.test(control)) throw new Error(`${name} has no control: ${head}`);
  const place = control as Probe["control"];
  return { name, part, kind, control: place, tries, code: code.join("\n") };
}

/** The name of a probe's cell. */
export const cellName = ({ name }: Probe) =>
  name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

const fenced = (head: string, code: string) => `\`\`\`js ${head}\n${code}\n\`\`\`\n\n`;

/** A body of a function that tries the probe with each of its addresses. */
export function bodyOf({ code }: Probe, aim: Aim): string {
  return `const at = ${JSON.stringify(aim.at)};
const said = [];
for (const url of ${JSON.stringify(urlsOf(aim))}) {
  try { said.push(await (async () => { ${code} })()); } catch (error) { said.push("refused: " + error); }
}
return said.join(" ") || "nothing";`;
}

/** A drawing's children: the probe's tree with each of its addresses. */
const treesOf = ({ code }: Probe, aim: Aim) =>
  `${JSON.stringify(urlsOf(aim))}.map((url) => (${code}))`;

/** The notebook of one part, with a cell or a paragraph for each probe. */
export function notebookOf(probes: readonly Probe[], aims: ReadonlyMap<string, Aim>): string {
  const blocks = probes.map((probe) => {
    const aim = aimOf(aims, probe);
    if (probe.part === "Prose") return prosesOf(probe, aim).join("\n\n");
    if (probe.part === "Cells")
      return fenced(
        `cell ${cellName(probe)}`,
        // Made by the maker of functions, so that not even the compiler's own refusals stand before it.
        `const maker = [].constructor.constructor;
return maker("scope", ${JSON.stringify(`return (async () => {\n${bodyOf(probe, aim)}\n})()`)})(maker("return this")());`,
      );
    const forms = `[{ from: 0, tree: [1, "svg", { viewBox: "0 0 99 99", width: "99" }, ${treesOf(probe, aim)}] }]`;
    return fenced(
      `cell ${cellName(probe)}`,
      `return { kind: "drawing", title: "A drawing", alternative: "words", forms: ${forms} };`,
    );
  });
  return `# Ways out\n\n${blocks.join("\n\n")}\n\n${fenced("cell last", '"all was tried"')}`;
}

export function prosesOf({ code }: Probe, aim: Aim): readonly string[] {
  return urlsOf(aim).map((url, which) =>
    code.replaceAll("{{url}}", url).replaceAll("{{which}}", String(which)),
  );
}

export function aimOf(aims: ReadonlyMap<string, Aim>, { name }: Probe): Aim {
  const aim = aims.get(name);
  if (!aim) throw new Error(`${name} has no address`);
  return aim;
}

export { treesOf };
