import {
  type BuyingProblem,
  foot,
  inch,
  type Length,
  money,
  type Piece,
  type PiecePart,
  readSection,
  type Section,
  type StockBoard,
  times,
  type YardTerms,
} from "../../lib/index.ts";
import { type Dice, dice } from "../lib/buying/dice.ts";

/** How large a garden is, and how different its beds are. */
export interface GardenKind {
  readonly name: string;
  readonly beds: number;
  /** Beds of a few sizes of a list; else of sizes up to 12 ft by 5 ft in steps of so many inches. */
  readonly sizes: "list" | number;
  /** Whether about half of the lengths on sale are few. */
  readonly limits: boolean;
}

const kinds: readonly Omit<GardenKind, "limits">[] = [
  { name: "3 beds", beds: 3, sizes: "list" },
  { name: "20 beds", beds: 20, sizes: "list" },
  { name: "100 beds, about 30 lengths", beds: 100, sizes: 5 },
  { name: "100 beds, about 90 lengths", beds: 100, sizes: 1 },
];

/** Every kind of garden that is measured, without and with limits. */
export const gardenKinds: readonly GardenKind[] = kinds.flatMap((kind) => [
  { ...kind, limits: false },
  { ...kind, name: `${kind.name}, limits`, limits: true },
]);

// Width and length outside, in inches, as beds are usually made.
const usualSizes = [
  [48, 96],
  [48, 48],
  [36, 72],
  [24, 96],
  [48, 120],
  [36, 36],
  [24, 72],
  [48, 144],
  [30, 60],
  [42, 84],
] as const;

type Size = readonly [width: number, length: number];

function bedSizes({ beds, sizes }: GardenKind, chance: Dice): Size[] {
  const size = (): Size => {
    if (sizes !== "list") return [inSteps(24, 60, sizes), inSteps(36, 144, sizes)];
    // Seven and ten have no divisor in common: so many different ones, from anywhere in the list.
    return usualSizes[(from + 7 * chance.whole(0, few - 1)) % 10] ?? usualSizes[0];
  };
  const inSteps = (least: number, most: number, step: number) =>
    least + step * chance.whole(0, Math.floor((most - least) / step));
  const from = chance.whole(0, usualSizes.length - 1);
  const few = beds === 3 ? 3 : chance.whole(3, 6);
  return Array.from({ length: beds }, size);
}

function sectionOf(text: string): Section {
  const read = readSection(text, { path: ["section"] });
  if (!read.ok) throw new Error(`no section: ${text}`);
  return read.value;
}

const inches = (count: number): Length => times(count, inch);

/** Boards of one use: their section, lengths on sale in feet, and price of a foot in cents. */
interface Use {
  readonly section: Section;
  readonly feet: readonly number[];
  readonly footCents: number;
}

const side: Use = { section: sectionOf("2x10"), feet: [8, 10, 12, 14, 16, 20], footCents: 95 };
const cap: Use = { section: sectionOf("2x6"), feet: [8, 10, 12, 14, 16], footCents: 70 };
const stake: Use = { section: sectionOf("2x4"), feet: [8, 10, 12], footCents: 55 };

/** Two courses butted at the corners, a flat cap, stakes at the corners and every four feet between. */
function piecesOf([width, length]: Size, bed: string): Piece[] {
  const made = (use: Use, part: PiecePart, lengthIn: number, count: number): Piece => ({
    name: `${bed} ${part} ${lengthIn}`,
    bed,
    part,
    section: use.section,
    length: inches(lengthIn),
    count,
  });
  const between = Math.floor((length - 1) / 48) + Math.floor((width - 1) / 48);
  return [
    made(side, "side", length, 4),
    made(side, "end", width - 3, 4),
    made(cap, "cap-side", length + 2, 2),
    made(cap, "cap-end", width - 5, 2),
    made(stake, "stake", 22, 4),
    ...(between > 0 ? [made(stake, "stake", 30, 2 * between)] : []),
  ];
}

// Long boards cost more by the foot, and not evenly so.
const byFeet: Readonly<Record<number, number>> = {
  8: 1,
  10: 1.03,
  12: 1,
  14: 1.1,
  16: 1.06,
  20: 1.22,
};

/** What a yard sells of a use: its own level of prices, some noise, the second yard not every length. */
function stockOf(
  { section, feet, footCents }: Use,
  { yard, level, chance }: { readonly yard: number; readonly level: number; readonly chance: Dice },
): StockBoard[] {
  const always = [8, 12, 16];
  return feet.flatMap((ft) => {
    if (yard === 1 && !always.includes(ft) && chance.chance(0.25)) return [];
    const noise = 1 + chance.whole(-400, 400) / 10_000;
    const cents = Math.round(footCents * ft * (byFeet[ft] ?? 1) * level * noise);
    const name = yards[yard] ?? "";
    return [{ yard: name, section, length: times(ft, foot), price: money(cents / 100) }];
  });
}

const yards = ["Alder", "Birch"] as const;

/** About half of the lengths are few; the longest usual one never, so that there is a plan. */
function limited(stock: readonly StockBoard[], pieces: readonly Piece[], chance: Dice) {
  return stock.map((board): StockBoard => {
    const like = pieces.filter(({ section }) => section === board.section);
    const allM = like.reduce((sum, { length, count }) => sum + length.si * count, 0);
    const enough = Math.ceil(allM / board.length.si);
    const endless = board.section === stake.section ? 12 : 16;
    const isFew = chance.chance(0.5) && Math.round(board.length.si / foot.si) !== endless;
    return isFew ? { ...board, limit: chance.whole(1, Math.max(1, Math.ceil(enough / 2))) } : board;
  });
}

/**
 * A garden to buy for: beds of a kind, two yards of which each is dear for something, a trip to each,
 * fifteen odd boards on hand. The same seed gives the same garden on every machine.
 */
export function gardenToBuy(kind: GardenKind, seed: number): BuyingProblem {
  const chance = dice(seed * 1000 + kind.beds);
  const pieces = bedSizes(kind, chance).flatMap((size, at) => piecesOf(size, `A-${at + 1}`));
  const terms = yards.map((yard, at): YardTerms => {
    const dollars = at === 0 ? chance.whole(4, 12) : chance.whole(8, 25);
    return { yard, tax: 0, taxOn: "goods", tripCost: money(dollars) };
  });
  const onSale = yards.flatMap((_, yard) => {
    const level = 0.9 + chance.whole(0, 2000) / 10_000;
    return [side, cap, stake].flatMap((use) => stockOf(use, { yard, level, chance }));
  });
  const onHand = Array.from({ length: 15 }, (): StockBoard => {
    const length = inches(chance.whole(20, 110));
    return { yard: null, section: side.section, length, price: money(0) };
  });
  const stock = [...(kind.limits ? limited(onSale, pieces, chance) : onSale), ...onHand];
  return {
    boards: { pieces, stock, kerf: inches(1 / 8), shortfall: inches(0) },
    needs: [],
    prices: [],
    yards: terms,
    currency: "USD",
    taxIncluded: false,
    carriesBulk: false,
  };
}
