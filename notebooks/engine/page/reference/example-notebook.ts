import { readNotebook } from "../../document/index.ts";
import type {
  CellId,
  CellState,
  Notebook,
  ReferenceExample,
  ReferenceName,
  Shown,
} from "../../types/index.ts";

/** An example of the reference with a number of its own, by which its cells are called. */
export interface NumberedExample {
  readonly number: number;
  readonly steps: ReferenceExample;
}

/** What an example gave, just now. */
export interface ExampleResults {
  /** By the step's place in the example. */
  readonly results: ReadonlyMap<number, ExampleResult>;
  /** Why it could not be worked out, in words. */
  readonly failed?: string;
}

export interface ExampleResult {
  readonly shown: Shown;
  /** As the doc comment would have it written: a quantity printed, anything else as JSON. */
  readonly stated: string;
  readonly agrees: boolean;
}

const file = "examples.md";

/** The steps whose results are shown: those that say one, else the last. */
export function resultSteps(steps: ReferenceExample): readonly number[] {
  const saying = steps.flatMap(({ says }, at) => (says === undefined ? [] : [at]));
  return saying.length > 0 ? saying : steps.length > 0 ? [steps.length - 1] : [];
}

/** A notebook that works examples out: of each, a cell for every result, and how it is stated. */
export function exampleNotebook(examples: readonly NumberedExample[]): Notebook {
  const cells = examples.flatMap(({ number, steps }) => [
    cell(`outcome${number}`, program(steps)),
    ...resultSteps(steps).map((at, index) =>
      cell(`result${number}at${at}`, `outcome${number}[${index}]`),
    ),
    cell(`stated${number}`, statedFormula(number)),
  ]);
  return readNotebook(cells.join("\n"), file);
}

function cell(name: string, formula: string): string {
  return `\`\`\`\`js cell ${name}\n${formula}\n\`\`\`\`\n`;
}

function program(steps: ReferenceExample): string {
  const results = resultSteps(steps);
  const lines = steps.map(({ code }, at) =>
    results.includes(at) ? `const outcome${at} = await (\n${code}\n);` : `${code};`,
  );
  return [...lines, `return [${results.map((at) => `outcome${at}`).join(", ")}];`].join("\n");
}

function statedFormula(number: number): string {
  return `const inside = (_, inner) => isQuantity(inner) ? printQuantity(inner) : inner;
const stated = (value) => isQuantity(value) ? printQuantity(value) : String(JSON.stringify(value, inside));
return outcome${number}.map(stated);`;
}

/** Reads what came of an example out of the states of its notebook's cells; undefined while it is not there. */
export function exampleResults(
  { number, steps }: NumberedExample,
  states: ReadonlyMap<CellId, CellState>,
): ExampleResults | undefined {
  const error = states.get(`${file}#outcome${number}`)?.error;
  if (error) return { results: new Map(), failed: error.message };
  const stated = textsOf(states.get(`${file}#stated${number}`)?.shown);
  if (!stated) return undefined;
  const results = new Map<number, ExampleResult>();
  for (const [index, at] of resultSteps(steps).entries()) {
    const shown = states.get(`${file}#result${number}at${at}`)?.shown;
    const text = stated[index];
    if (!shown || text === undefined) return undefined;
    const says = steps[at]?.says ?? text;
    results.set(at, { shown, stated: text, agrees: says === text });
  }
  return { results };
}

function textsOf(shown: Shown | undefined): readonly string[] | undefined {
  if (shown?.kind !== "list") return undefined;
  return shown.items.map((item) => (item.kind === "text" ? item.text : ""));
}

/** Whether an example calls a function that takes long: it is worked out when asked. */
export function isLong(steps: ReferenceExample, names: readonly ReferenceName[]): boolean {
  const code = steps.map((step) => step.code).join("\n");
  return names.some(({ name, long }) => long === true && new RegExp(`\\b${name}\\(`).test(code));
}
