import {
  anyOf,
  byField,
  type Check,
  finite,
  list,
  nested,
  record,
  recordOf,
  text,
  word,
} from "./checks.ts";

const short = text(500);
const long = text(20_000);
const texts = list(short, 500);

export const figure = record({ text: long, number: long, unit: short }, { second: short });

const measure = record({ of: short, low: finite, likely: finite, high: finite });

const caution = record(
  { id: short, fact: long, advice: long, defersTo: long, sources: texts },
  { because: long },
);
export const cautions = list(caution, 200);

const path = list(anyOf(short, finite), 12);
const problem = record(
  { code: short, path, allowed: long, received: long, remedy: long, sentence: long },
  { also: list(path, 50) },
);
export const problems = list(problem, 20_000);
export const remarks = list(record({ path, text: long }), 2_000);

/** A drawing's tree; a path's data may be long, a drawing of 2,000 boards has many parts. */
const tree = nested(40, (inner) =>
  anyOf(text(200_000), (value, budget) => {
    if (!Array.isArray(value) || value.length !== 4 || !budget.part()) return false;
    const [space, name, attributes, children] = value as unknown[];
    return (
      word(0, 1)(space, budget) &&
      text(60)(name, budget) &&
      recordOf(text(200_000), 60)(attributes, budget) &&
      list(inner)(children, budget)
    );
  }),
);

const drawing = record(
  {
    title: long,
    alternative: long,
    forms: list(record({ from: finite, tree }), 8),
  },
  { caption: long },
);

const column = record({ key: short, title: short, unit: short, align: word("left", "right") });

export const shown: Check = nested(12, (inner) =>
  byField("kind", {
    nothing: record({}),
    figure: record({ figure }, { measure }),
    text: record({ text: text(200_000) }),
    table: record({ columns: list(column, 200), rows: list(list(figure, 200)), more: finite }),
    record: record({ fields: list(record({ title: short, shown: inner }), 500) }),
    list: record({ items: list(inner, 5_000), more: finite }),
    drawing: record({ drawing }),
    cautions: record({ cautions }),
    "rows-for": record({
      table: short,
      columns: list(short, 50),
      rows: list(list(long, 50), 1_000),
    }),
    "table-text": record({
      columns: list(short, 200),
      rows: list(list(long, 200)),
      decimal: word(".", ","),
    }),
  }),
);

const kinds = word(
  ...["length", "area", "volume", "mass", "money", "number", "percent", "choice", "yes-no"],
  ...["date", "text"],
);

export const entry = record(
  { entry: kinds, initial: long, text: long },
  {
    complete: long,
    hint: long,
    unit: short,
    options: list(record({ text: short, label: short }), 500),
    limits: short,
    slide: record({ from: finite, to: finite, step: finite }, { at: finite }),
    sources: texts,
    printed: figure,
    problem,
  },
);

export const cellError = record(
  {
    kind: word("document", "formula", "problems", "waits", "stopped"),
    message: text(200_000),
    file: short,
    line: finite,
    names: texts,
    problems,
  },
  { column: finite },
);
