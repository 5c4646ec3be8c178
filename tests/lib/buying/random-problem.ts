import {
  type BuyingProblem,
  cubicFoot,
  inch,
  kilogram,
  kilogramPerCubicMetre,
  money,
  type Need,
  type OffcutWorth,
  over,
  type Piece,
  type PriceLine,
  type StockBoard,
  times,
  type YardTerms,
} from "../../../lib/index.ts";
import { section } from "../lumber/make.ts";
import { type Dice, dice } from "./dice.ts";

const inches = (n: number) => times(n, inch);
const cents = (n: number) => money(n / 100, "USD");

interface Kind {
  readonly section: Piece["section"];
  readonly timber?: string;
}

const kinds: readonly [Kind, ...Kind[]] = [
  { section: section("2x12"), timber: "treated" },
  { section: section("2x6"), timber: "treated" },
  { section: section("2x12"), timber: "cedar" },
  { section: section("4x4") },
];

function someYards(at: Dice): YardTerms[] {
  return ["Alder", "Birch", "Cherry"].slice(0, at.whole(2, 3)).map((yard): YardTerms => {
    const brings = at.chance(0.5);
    return {
      yard,
      tax: at.pick([0, 0.05, 0.0725, 0.06875]),
      taxOn: at.pick(["goods", "goods and delivery"]),
      ...(at.chance(0.8) ? { tripCost: cents(at.whole(200, 1500)) } : {}),
      ...(brings ? { delivery: cents(at.whole(800, 4000)) } : {}),
      ...(brings && at.chance(0.5) ? { deliveryFrom: cents(at.whole(3000, 12000)) } : {}),
      ...(at.chance(0.2) ? { payload: times(at.whole(40, 160), kilogram) } : {}),
    };
  });
}

function somePieces(at: Dice, groups: readonly Kind[]): Piece[] {
  const different = at.whole(Math.max(2, groups.length), 6);
  const mitred = at.chance(0.08);
  return Array.from({ length: different }, (_, i): Piece => {
    const bed = `A-${at.whole(1, 4)}`;
    const eighths = at.whole(8 * 14, 8 * 78);
    return {
      name: `${bed} piece ${i + 1}`,
      bed,
      part: "other",
      ...(groups[i % groups.length] ?? kinds[0]),
      length: inches((at.chance(0.5) ? Math.round(eighths / 8) * 8 : eighths) / 8),
      count: at.whole(1, different > 4 ? 4 : 8),
      ...(mitred && at.chance(0.5) ? { mitred: true } : {}),
    };
  });
}

/** The boards of one section and timber at one yard: up to three lengths, perhaps a price break or bundles. */
function boardsAt(at: Dice, kind: Kind, yard: string): StockBoard[] {
  if (at.chance(0.15)) return [];
  const perInch = kind.section.name === "2x12" ? 22 : 11;
  const lengths = [48, 72, 80, 96, 120, 144].filter(() => at.chance(0.4));
  return (lengths.length === 0 ? [96] : lengths).flatMap((length): StockBoard[] => {
    const price = Math.round(length * perInch * (at.whole(80, 120) / 100));
    const line = { yard, ...kind, length: inches(length) };
    const first: StockBoard = {
      ...line,
      price: cents(price),
      ...(at.chance(0.3) ? { limit: at.whole(1, 5) } : {}),
      ...(at.chance(0.12) ? { step: at.whole(2, 4) } : {}),
    };
    if (at.chance(0.75)) return [first];
    const less = Math.round((price * at.whole(80, 97)) / 100);
    const broken: StockBoard = { ...line, price: cents(less), from: at.whole(2, 6) };
    return [first, at.chance(0.2) ? { ...broken, step: at.whole(2, 3) } : broken];
  });
}

function onHand(at: Dice, groups: readonly Kind[]): StockBoard[] {
  return Array.from({ length: at.whole(0, 3) }, (): StockBoard => {
    const kind = at.pick([groups[0] ?? kinds[0], ...groups]);
    return {
      yard: null,
      ...kind,
      length: inches(at.whole(16 * 16, 16 * 90) / 16),
      price: cents(0),
      ...(at.chance(0.3) ? { limit: 2 } : {}),
    };
  });
}

const compost = {
  kind: "volume",
  item: "compost",
  use: "fill",
  volume: cubicFoot,
  density: {
    low: times(500, kilogramPerCubicMetre),
    likely: times(600, kilogramPerCubicMetre),
    high: times(700, kilogramPerCubicMetre),
    basis: ["common practice"],
  },
  shares: [{ bed: "A-1", share: 1 }],
} as const satisfies Need;

function someNeeds(at: Dice): Need[] {
  const plates = {
    kind: "count",
    item: "corner plate",
    use: "corners",
    shares: compost.shares,
  } as const;
  const all: Need[] = [
    { ...compost, volume: times(at.whole(2, 14), cubicFoot) },
    { ...plates, count: at.whole(3, 24) },
    { ...plates, item: "3 in screws", use: "boards", count: at.whole(20, 150) },
  ];
  return all.filter(() => at.chance(0.4));
}

/** Prices of the goods at one yard; a yard may not have them all. */
function goodsAt(at: Dice, yard: string): PriceLine[] {
  const common = { row: 1, yard, limit: undefined, from: 1, step: 1, kind: "goods" } as const;
  const volume = (cubicFeet: number) =>
    ({ kind: "volume", volume: times(cubicFeet, cubicFoot) }) as const;
  const lines: PriceLine[] = [
    { ...common, item: "compost", form: "bag", price: cents(at.whole(350, 700)), size: volume(1) },
    {
      ...common,
      item: "compost",
      form: "bulk",
      price: cents(at.whole(2500, 5000)),
      size: volume(27),
      from: 0.5,
      step: 0.5,
    },
    {
      ...common,
      item: "corner plates",
      form: "pack",
      price: cents(at.whole(150, 900)),
      size: { kind: "count", count: at.pick([1, 2, 4, 10]) },
      ...(at.chance(0.3) ? { limit: at.whole(3, 12) } : {}),
    },
    {
      ...common,
      item: "3 in screws",
      form: "pack",
      price: cents(at.whole(300, 1200)),
      size: { kind: "count", count: at.pick([25, 50, 100]) },
    },
  ];
  return lines.filter(() => at.chance(0.8));
}

/** Less than any board costs by length, as it must be. */
function someWorth(at: Dice, stock: readonly StockBoard[]): { offcuts?: OffcutWorth } {
  const rates = stock.flatMap((board) =>
    board.yard === null ? [] : [board.price.si / board.length.si],
  );
  if (rates.length === 0 || !at.chance(0.3)) return {};
  const perInch = Math.floor(Math.min(...rates) * 0.0254 * 100 * (at.whole(20, 70) / 100));
  if (perInch < 1) return {};
  return { offcuts: { from: inches(at.whole(10, 30)), worth: over(cents(perInch), inch) } };
}

/** One piece longer than every board, with or without stakes behind it. */
function overlong(at: Dice, kind: Kind): Piece {
  const length = at.whole(150, 170);
  const middle = Math.round(length / 2);
  const stakes = [middle - at.whole(20, 30), middle, middle + at.whole(20, 30)].map(inches);
  return {
    ...{ name: "A-9 side", bed: "A-9", part: "side", ...kind },
    ...{ length: inches(length), count: at.whole(1, 2) },
    ...(at.chance(0.5) ? { stakesAt: stakes } : {}),
  };
}

/** A buying problem small enough to list every way to cut every board of it; the same for the same seed. */
export function randomProblem(seed: number): BuyingProblem {
  const at = dice(seed);
  const yards = someYards(at);
  const first = at.pick(kinds);
  const groups = at.chance(0.4)
    ? [first, at.pick(kinds)].filter((kind, i) => i === 0 || kind !== first)
    : [first];
  const splice = at.chance(0.08);
  const pieces = [...somePieces(at, groups), ...(splice ? [overlong(at, first)] : [])];
  const onSale = groups.flatMap((kind) => yards.flatMap(({ yard }) => boardsAt(at, kind, yard)));
  const stock = [...onSale, ...onHand(at, groups)];
  const loading = at.chance(0.35);
  return {
    boards: {
      pieces,
      stock,
      kerf: inches(at.pick([0, 1 / 16, 1 / 8, 1 / 8, 3 / 16, 1 / 4])),
      shortfall: inches(at.pick([0, 0, 1 / 8, 1 / 4])),
      ...(at.chance(0.25) ? { squaring: inches(at.whole(2, 12) / 8) } : {}),
      ...someWorth(at, stock),
      ...(splice ? { splice } : {}),
      ...(loading ? { loadLength: inches(at.whole(70, 110)) } : {}),
      ...(loading && at.chance(0.6) ? { cutAtYard: true } : {}),
    },
    needs: someNeeds(at),
    prices: yards.flatMap(({ yard }) => goodsAt(at, yard)),
    yards,
    currency: "USD",
    taxIncluded: at.chance(0.3),
    carriesBulk: at.chance(0.4),
    ...(at.chance(0.8) ? { carPayload: times(at.whole(50, 220), kilogram) } : {}),
    ...(at.chance(0.8) ? { woodDensity: times(at.whole(450, 700), kilogramPerCubicMetre) } : {}),
  };
}
