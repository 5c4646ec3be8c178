import type { Path, Problem } from "../check/index.ts";
import type { Given } from "../measure/given.ts";
import { isQuantity, type Quantity } from "../measure/index.ts";
import { dimensionInWords } from "../measure/kinds.ts";
import { receivedText } from "../measure/received.ts";
import type { SheetLevel, SheetPoint, SheetSeries } from "./bands-sheet.ts";

/** Lines and levels in plain numbers. */
export interface ReadSeries {
  readonly series: readonly SheetSeries[];
  readonly levels: readonly SheetLevel[];
  /** A quantity of the kind that is drawn; undefined for plain numbers. */
  readonly like: Quantity | undefined;
  readonly least: number;
  readonly most: number;
}

const mostLines = 6;
const mostPoints = 5000;
/** Beyond this, in the coherent unit, a value is a slip. */
const mostValue = 1e12;

/** Reads lines and levels; problems go to `given`. */
export function readSeries(given: Given, series: unknown, levels: unknown): ReadSeries {
  const reader = new ValueReader(given, holdsQuantity([series, levels]) ? "quantity" : "number");
  const read = given.list(series, ["series"], 1).map((one, at) => seriesOf(given, reader, one, at));
  if (read.length > mostLines) tooMany(given, ["series"], { most: mostLines, found: read.length });
  const straight = given.list(levels, ["levels"]).map((level, at) => {
    const path = ["levels", at + 1];
    const row = given.fields(level, path);
    return {
      name: given.name(row.name, [...path, "name"]),
      value: reader.read(row.value, [...path, "value"]),
    };
  });
  const all = [
    ...read.flatMap(({ points }) => points.flatMap(({ low, high }) => [low, high])),
    ...straight.map(({ value }) => value),
  ];
  return {
    series: read,
    levels: straight,
    like: reader.like,
    least: all.reduce((a, b) => Math.min(a, b), 0),
    most: all.reduce((a, b) => Math.max(a, b), 0),
  };
}

function seriesOf(given: Given, reader: ValueReader, one: unknown, at: number): SheetSeries {
  const path = ["series", at + 1];
  const row = given.fields(one, path);
  const list = given.list(row.points, [...path, "points"], 2);
  if (list.length > mostPoints)
    tooMany(given, [...path, "points"], { most: mostPoints, found: list.length });
  const points = list.slice(0, mostPoints).map((point, place): SheetPoint => {
    const here = [...path, "points", place + 1];
    const fields = given.fields(point, here);
    const x = given.plain(fields.at, [...here, "at"], { min: -1e9, max: 1e9 });
    return { at: x, ...rangeOf(given, reader, fields.value, [...here, "value"]) };
  });
  const back = points.findIndex((point, place) => point.at < (points[place - 1]?.at ?? point.at));
  if (given.clean && back > 0) {
    given.add({
      code: "contradiction",
      path: [...path, "points", back + 1, "at"],
      allowed: "places that go on to the right",
      received: `${points[back]?.at} after ${points[back - 1]?.at}`,
      remedy: "Sort the points by where they stand.",
    });
  }
  return {
    name: given.name(row.name, [...path, "name"]),
    shape: given.oneOf(row.shape ?? "line", ["line", "step"], [...path, "shape"]),
    points,
  };
}

function rangeOf(given: Given, reader: ValueReader, value: unknown, path: Path) {
  const isRange = typeof value === "object" && value !== null && "likely" in value;
  if (!isRange) {
    const single = reader.read(value, path);
    return { low: single, likely: single, high: single };
  }
  const row = given.fields(value, path);
  const [low, likely, high] = (["low", "likely", "high"] as const).map((key) =>
    reader.read(row[key], [...path, key]),
  ) as [number, number, number];
  if (given.clean && !(low <= likely && likely <= high)) {
    given.add({
      code: "contradiction",
      path,
      allowed: "figures that rise from low over likely to high",
      received: `${low}, ${likely}, ${high}`,
      remedy: "Put the three figures in order.",
    });
  }
  return { low, likely, high };
}

function tooMany(given: Given, path: Path, { most, found }: { most: number; found: number }): void {
  given.add({
    code: "too-large",
    path,
    allowed: `at most ${most}`,
    received: String(found),
    remedy: "Draw fewer, or several drawings.",
  });
}

/** Whether a quantity stands anywhere within: then a bare number among the values lacks its unit. */
function holdsQuantity(value: unknown): boolean {
  if (isQuantity(value)) return true;
  if (typeof value !== "object" || value === null) return false;
  return Object.values(value).some(holdsQuantity);
}

/** Reads values that must be of the first one's kind and currency. */
class ValueReader {
  like: Quantity | undefined;
  private readonly kind: "quantity" | "number";
  private readonly given: Given;

  constructor(given: Given, kind: "quantity" | "number") {
    this.given = given;
    this.kind = kind;
  }

  read(value: unknown, path: Path): number {
    if (!isQuantity(value)) return this.plain(value, path);
    const problem = this.problemOf(value, path);
    if (problem) this.given.add(problem);
    else if (this.like === undefined || value.currency !== undefined) this.like = value;
    return problem ? 0 : value.si;
  }

  private plain(value: unknown, path: Path): number {
    if (this.kind === "quantity" && typeof value === "number") {
      this.given.add(this.unfit(value, path, "wrong-unit"));
      return 0;
    }
    return this.given.plain(value, path, { min: -mostValue, max: mostValue });
  }

  private problemOf(value: Quantity, path: Path): Problem | undefined {
    const { like } = this;
    if (!Number.isFinite(value.si)) return this.unfit(value, path, "unreadable");
    if (Math.abs(value.si) > mostValue) return this.unfit(value, path, "too-large");
    if (like === undefined) return undefined;
    if (value.dim.join() !== like.dim.join()) return this.unfit(value, path, "wrong-unit");
    const mixed =
      value.currency !== undefined &&
      like.currency !== undefined &&
      value.currency !== like.currency;
    return mixed ? this.unfit(value, path, "mixed-currency") : undefined;
  }

  private unfit(value: unknown, path: Path, code: Problem["code"]): Problem {
    const kind = this.like ? dimensionInWords(this.like.dim) : "a quantity";
    const allowed =
      code === "mixed-currency"
        ? `money in ${this.like?.currency}`
        : code === "wrong-unit"
          ? `${kind}, as other values are`
          : `a finite value, at most ${mostValue}`;
    const remedy = "Draw values of one kind together, and look for a slip.";
    return { code, path, allowed, received: receivedText(value), remedy };
  }
}
