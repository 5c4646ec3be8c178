import { requireRecord } from "../check/index.ts";
import type { ReceiptLine, SizeShown, YardReceipt, YardTerms } from "../cost/index.ts";
import { yardTerms } from "../cost/shapes.ts";
import {
  kilogram,
  type Length,
  type Mass,
  massDimension,
  printQuantity,
  quantity,
  requireChoice,
  times,
  type UnitSystem,
} from "../measure/index.ts";
import { fields, listed, perhaps, requireShape, sized } from "../measure/shape.ts";
import type { BuyingPlan } from "./buying-plan.ts";
import { listedPlan } from "./plan-shape.ts";
import { loadedLength, yardCuts, yardCutWords } from "./yard-cuts.ts";

/** What goes on the car in one trip, in the order it is put there. */
export interface LoadRow {
  readonly yard: string;
  readonly trip: number;
  readonly what: string;
  readonly size: SizeShown;
  /** How many; a fraction of loose goods. */
  readonly count: number;
  /** Of all of them; null where it is not known, and then it is not counted. */
  readonly mass: Mass | null;
  /** What is to be done first, or minded; empty for nothing. */
  readonly note: string;
}

/** What the car carries, and how it is told. */
export interface LoadOptions {
  /** The yards' terms, of which `payload` counts before the car's. Default: none. */
  readonly yards?: readonly YardTerms[];
  /** What the car carries in one trip. Default: everything. */
  readonly carPayload?: Mass | undefined;
  /** Of masses and lengths that stand in words. Default: `us`. */
  readonly system?: UnitSystem;
}

const optionShape = fields({
  yards: perhaps(listed(yardTerms)),
  carPayload: perhaps(sized("mass", { min: kilogram, max: times(100_000, kilogram) })),
});

/**
 * In what order the car is loaded at each yard that is fetched from: what is cut at the yard is cut
 * first, then the longest goes in, of equally long things the heaviest, then what is loose. Each
 * thing goes on the first trip that has room for its mass.
 *
 * @param plan as `planBuying` gives it
 * @param options `yards`, `carPayload` 1 kg to 100 t, `system`
 * @returns no rows for what is brought. A row says so where one thing alone is over what the car
 * carries, and where things that can't be divided take a trip more than the plan counts
 * @throws ProblemError for what is no plan, and for a mass out of range
 * @rule mass on a trip <= payload, the longest first, first trip that has room
 * @source common practice
 * @example
 * const section = readSection("2x12", { path: [] }).value
 * const piece = { name: "A side", bed: "A", part: "side", section, length: times(7, foot), count: 2 }
 * const board = { yard: "Alder", section, length: times(8, foot), price: money(20, "USD") }
 * const boards = { pieces: [piece], stock: [board], kerf: times(0.125, inch), shortfall: times(0, inch) }
 * const yards = [{ yard: "Alder", tax: 0.05, taxOn: "goods", tripCost: money(4, "USD") }]
 * const problem = { boards, needs: [], prices: [], yards, currency: "USD", taxIncluded: false, carriesBulk: false }
 * const solve = async (program) => ({ state: "optimal", values: program.columns.map(() => 2), bound: 2, rowWorth: [] })
 * const plan = await planBuying(problem, { solve })
 * loadOrder(plan, { yards }).map((row) => [row.trip, row.what, row.count]) // => [[1,"2x12",2]]
 */
export function loadOrder(plan: BuyingPlan, options: LoadOptions = {}): readonly LoadRow[] {
  requireRecord(options, ["options"]);
  const { yards = [], carPayload, system = "us" } = options;
  requireShape(options, optionShape, ["options"]);
  requireChoice(system, ["us", "metric"], ["options", "system"]);
  requireShape(plan, listedPlan, ["plan"]);
  return plan.receipts.flatMap((receipt) => {
    const own = yards.find(({ yard }) => yard === receipt.yard)?.payload;
    const payload = own ?? carPayload;
    const loads = loadsOf(plan, receipt, system).sort(
      (a, b) =>
        Number(a.isLoose) - Number(b.isLoose) ||
        b.length.si - a.length.si ||
        (b.oneKg ?? 0) - (a.oneKg ?? 0),
    );
    return packed(receipt, loads, { payload, system });
  });
}

/** Things alike to be loaded. */
interface Load {
  readonly what: string;
  readonly size: SizeShown;
  readonly count: number;
  readonly length: Length;
  /** Undefined where it is not known. */
  readonly oneKg: number | undefined;
  readonly isLoose: boolean;
  readonly note: string;
}

function loadsOf(plan: BuyingPlan, { yard, lines }: YardReceipt, system: UnitSystem): Load[] {
  const fetched = lines.filter((line) => line.delivered !== true && line.count > 0);
  return fetched.flatMap((line): Load[] => {
    const whole = loadOf(line);
    const cuts = yardCuts(plan.boards, { yard, line });
    const cutCount = cuts.reduce((sum, { count }) => sum + count, 0);
    const parts = cuts.map((cut): Load => {
      const { count, longest: length } = cut;
      return { ...whole, count, length, note: yardCutWords(cut, system) };
    });
    const rest = whole.count - cutCount;
    return rest > 0 ? [...parts, { ...whole, count: rest }] : parts;
  });
}

function loadOf(line: ReceiptLine): Load {
  const { item, size, count, mass, form } = line;
  return {
    what: item,
    size,
    count,
    length: loadedLength(line),
    oneKg: mass === undefined ? undefined : mass.si / count,
    isLoose: form === "bulk",
    note: "",
  };
}

interface Limits {
  readonly payload: Mass | undefined;
  readonly system: UnitSystem;
}

const hair = 1e-9;
/** Loose goods are loaded in hundredths of what they are sold by. */
const looseStep = 0.01;
/** What takes more trips than this is not listed trip by trip. */
const mostTrips = 100;

function packed(receipt: YardReceipt, loads: readonly Load[], limits: Limits): LoadRow[] {
  const payloadKg = limits.payload?.si ?? Number.POSITIVE_INFINITY;
  const rooms: number[] = [];
  const rows: LoadRow[] = [];
  for (const load of loads) {
    const { oneKg = 0, isLoose } = load;
    const most = fitting(payloadKg, oneKg, isLoose);
    if (most <= 0 || load.count / most > mostTrips) {
      rooms.push(0);
      const note = most <= 0 ? tooHeavy(oneKg, limits) : tooMany(load.count / most);
      rows.push(rowOf(receipt, load, { trip: rooms.length, note }));
      continue;
    }
    let left = load.count;
    for (let at = 0; left > hair; at++) {
      if (at === rooms.length) rooms.push(payloadKg);
      const room = rooms[at] ?? 0;
      const count = Math.min(left, fitting(room, oneKg, isLoose));
      if (count <= 0) continue;
      rooms[at] = room - count * oneKg;
      left -= count;
      rows.push(rowOf(receipt, { ...load, count }, { trip: at + 1, note: "" }));
    }
  }
  return rows
    .map((row, order) => ({ row, order }))
    .sort((a, b) => a.row.trip - b.row.trip || a.order - b.order)
    .map(({ row }) => withTrips(row, receipt.trips));
}

/** How many go into the room; of loose goods any part of one. */
function fitting(roomKg: number, oneKg: number, isLoose: boolean): number {
  if (oneKg <= 0) return Number.POSITIVE_INFINITY;
  const many = roomKg / oneKg + hair;
  if (!Number.isFinite(many)) return many;
  return isLoose ? Math.floor(many / looseStep) * looseStep : Math.floor(many);
}

function rowOf(
  { yard }: YardReceipt,
  { what, size, count, oneKg, note: own }: Load,
  { trip, note }: { readonly trip: number; readonly note: string },
): LoadRow {
  const mass = oneKg === undefined ? null : quantity(oneKg * count, massDimension);
  const said = [own, note].filter((text) => text !== "").join("; ");
  return { yard, trip, what, size, count: Number(count.toFixed(6)), mass, note: said };
}

function tooHeavy(oneKg: number, { payload, system }: Limits): string {
  const [one, most] = [quantity(oneKg, massDimension), payload].map((mass) =>
    mass === undefined ? "" : printQuantity(mass, { system }),
  );
  return `one alone weighs ${one}, the car carries ${most}: have it brought`;
}

function tooMany(trips: number): string {
  return `${Math.ceil(trips)} trips of it: have it brought`;
}

function withTrips(row: LoadRow, trips: number): LoadRow {
  if (row.trip <= trips || row.note.includes("have it brought")) return row;
  const more = `a trip more than the ${trips} in the sums: these can't be divided`;
  return { ...row, note: row.note === "" ? more : `${row.note}; ${more}` };
}
