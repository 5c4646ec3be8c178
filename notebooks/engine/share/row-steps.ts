import type { TableText } from "../types/index.ts";
import type { RowStep, RowSteps } from "./record.ts";

type Row = readonly string[];

/** How to come from one table to another: rows kept in runs, changed fields, rows left and added. */
export function rowSteps(from: TableText, to: TableText): RowSteps {
  const columns = columnsFrom(from, to);
  const before = columns === undefined ? from.rows : projected(from.rows, columns);
  const after = to.rows;
  const head = sameAtStart(before, after);
  const tail = sameAtStart(before.slice(head).reverse(), after.slice(head).reverse());
  const middle = between(
    before.slice(head, before.length - tail),
    after.slice(head, after.length - tail),
  );
  const rows = joined([...run("keep", head), ...middle, ...run("keep", tail)]);
  return { ...(columns === undefined ? {} : { columns }), rows, decimal: to.decimal };
}

/** The table that the steps make of one; undefined where they don't fit it. */
export function takeSteps(from: TableText, steps: RowSteps): TableText | undefined {
  const { columns, decimal } = steps;
  if (columns?.some((one) => typeof one === "number" && from.columns[one] === undefined))
    return undefined;
  const names = columns?.map((one) => (typeof one === "number" ? from.columns[one] : one) ?? "");
  const before = columns === undefined ? from.rows : projected(from.rows, columns);
  const rows = rowsAfter(before, steps.rows, names?.length ?? from.columns.length);
  return rows && { kind: "table", name: from.name, columns: names ?? from.columns, rows, decimal };
}

function rowsAfter(before: readonly Row[], steps: readonly RowStep[], width: number) {
  const rows: Row[] = [];
  let at = 0;
  for (const step of steps) {
    if (step.step === "add") {
      if (step.row.length !== width) return undefined;
      rows.push(step.row);
    } else if (step.step === "change") {
      const row = before[at]?.slice();
      if (row === undefined) return undefined;
      for (const { column, text } of step.fields) {
        if (column >= width) return undefined;
        row[column] = text;
      }
      rows.push(row);
      at += 1;
    } else {
      if (at + step.count > before.length) return undefined;
      if (step.step === "keep") rows.push(...before.slice(at, at + step.count));
      at += step.count;
    }
  }
  // Steps that don't come out at the end were made for another table.
  return at === before.length ? rows : undefined;
}

function columnsFrom(from: TableText, to: TableText): readonly (number | string)[] | undefined {
  const isSame =
    from.columns.length === to.columns.length &&
    from.columns.every((name, index) => name === to.columns[index]);
  if (isSame) return undefined;
  const used = new Set<number>();
  return to.columns.map((name) => {
    const index = from.columns.findIndex((one, at) => one === name && !used.has(at));
    if (index < 0) return name;
    used.add(index);
    return index;
  });
}

function projected(rows: readonly Row[], columns: readonly (number | string)[]): readonly Row[] {
  return rows.map((row) => columns.map((one) => (typeof one === "number" ? (row[one] ?? "") : "")));
}

function sameAtStart(a: readonly Row[], b: readonly Row[]): number {
  let count = 0;
  while (count < a.length && count < b.length && isSame(a[count] ?? [], b[count] ?? [])) count += 1;
  return count;
}

function isSame(a: Row, b: Row): boolean {
  return a.length === b.length && a.every((text, index) => text === b[index]);
}

function run(step: "keep" | "leave", count: number): readonly RowStep[] {
  return count === 0 ? [] : [{ step, count }];
}

const added = (rows: readonly Row[]) => rows.map((row): RowStep => ({ step: "add", row }));

/** So many pairs of rows are weighed; beyond, all are left and the new ones added. */
const mostPairs = 250_000;

/** The shortest way from some rows to others. */
function between(before: readonly Row[], after: readonly Row[]): readonly RowStep[] {
  if (before.length * after.length > mostPairs || before.length === 0 || after.length === 0)
    return [...run("leave", before.length), ...added(after)];
  const costs = costsToEnd(before, after);
  const cost = (left: number, right: number) => costs[left]?.[right] ?? Number.POSITIVE_INFINITY;
  const steps: RowStep[] = [];
  let [left, right] = [0, 0];
  while (left < before.length || right < after.length) {
    const [old, fresh] = [before[left], after[right]];
    const here = cost(left, right);
    if (old && fresh && here === changeCost(old, fresh) + cost(left + 1, right + 1)) {
      steps.push(changed(old, fresh));
      left += 1;
      right += 1;
    } else if (old && here === leaveCost + cost(left + 1, right)) {
      steps.push({ step: "leave", count: 1 });
      left += 1;
    } else {
      steps.push({ step: "add", row: fresh ?? [] });
      right += 1;
    }
  }
  return steps;
}

/** About how many letters a step takes in a link. */
const leaveCost = 2;
const addCost = (row: Row) => row.reduce((sum, text) => sum + text.length + 3, 4);
function changeCost(old: Row, fresh: Row): number {
  let sum = 0;
  for (const [column, text] of fresh.entries())
    if (text !== old[column]) sum += (sum === 0 ? 4 : 0) + text.length + 5;
  return sum;
}

function costsToEnd(before: readonly Row[], after: readonly Row[]): readonly Float64Array[] {
  const costs = before.map(() => new Float64Array(after.length + 1));
  costs.push(new Float64Array(after.length + 1));
  const at = (left: number, right: number) => costs[left]?.[right] ?? 0;
  for (let left = before.length; left >= 0; left -= 1)
    for (let right = after.length; right >= 0; right -= 1) {
      const [old, fresh, line] = [before[left], after[right], costs[left]];
      if (line === undefined || (!old && !fresh)) continue;
      line[right] = Math.min(
        old && fresh ? changeCost(old, fresh) + at(left + 1, right + 1) : Number.POSITIVE_INFINITY,
        old ? leaveCost + at(left + 1, right) : Number.POSITIVE_INFINITY,
        fresh ? addCost(fresh) + at(left, right + 1) : Number.POSITIVE_INFINITY,
      );
    }
  return costs;
}

function changed(old: Row, fresh: Row): RowStep {
  const fields = [...fresh.entries()].flatMap(([column, text]) =>
    text === old[column] ? [] : [{ column, text }],
  );
  return fields.length === 0 ? { step: "keep", count: 1 } : { step: "change", fields };
}

/** Runs that follow each other become one. */
function joined(steps: readonly RowStep[]): readonly RowStep[] {
  const all: RowStep[] = [];
  for (const step of steps) {
    const last = all.at(-1);
    if (last && "count" in last && "count" in step && last.step === step.step)
      all[all.length - 1] = { step: step.step, count: last.count + step.count };
    else all.push(step);
  }
  return all;
}
