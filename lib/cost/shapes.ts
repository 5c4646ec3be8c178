import { checkSection } from "../lumber/checks.ts";
import { cubicMetre, kilogram, metre, money, times } from "../measure/index.ts";
import {
  byKind,
  counted,
  fields,
  listed,
  named,
  numbered,
  once,
  oneOf,
  perhaps,
  type Shape,
  shown,
  sized,
  worded,
} from "../measure/shape.ts";
import { sumBounds } from "./cents.ts";

export const section: Shape = once(checkSection);

const aLength = sized("length", { min: times(0, metre), max: times(100_000, metre) });
export const someLength = sized("length", { above: times(0, metre), max: times(100_000, metre) });
export const aVolume = sized("volume", { min: times(0, cubicMetre), max: times(1e7, cubicMetre) });
const someVolume = sized("volume", { above: times(0, cubicMetre), max: times(1e7, cubicMetre) });
const aMass = sized("mass", { min: times(0, kilogram), max: times(1e9, kilogram) });
const someMass = sized("mass", { above: times(0, kilogram), max: times(1e9, kilogram) });
export const aSum = sized("money", { min: money(0), max: money(1e12) });
const anAmount = numbered({ min: 0, max: 1e9 });
const someAmount = numbered({ above: 0, max: 1e9 });

const share = fields({ bed: worded, share: numbered({ min: 0, max: 1e15 }) });
const shares = once(listed(share));
const forms = oneOf("board", "bag", "bulk", "pack", "roll", "kit");

const priced = {
  row: perhaps(numbered({ min: 0, max: 1e9 })),
  yard: named,
  item: named,
  price: aSum,
  form: forms,
  limit: perhaps(anAmount),
  from: anAmount,
  step: someAmount,
};

/** A line of a price list. */
export const priceLine = once(
  byKind("kind", {
    board: { ...priced, section, timber: perhaps(worded), length: someLength },
    goods: {
      ...priced,
      size: byKind("kind", {
        volume: { volume: someVolume },
        mass: { mass: someMass },
        count: { count: someAmount },
        length: { length: someLength },
      }),
    },
    sheet: { ...priced, length: someLength, width: someLength },
    kit: { ...priced, length: someLength, width: someLength, height: someLength },
  }),
);

/** A yard with its terms. */
export const yardTerms = once(
  fields({
    yard: named,
    tripCost: perhaps(aSum),
    tax: numbered({ min: 0, max: 1 }),
    taxOn: oneOf("goods", "goods and delivery"),
    delivery: perhaps(aSum),
    deliveryFrom: perhaps(aSum),
    distance: perhaps(aLength),
    payload: perhaps(someMass),
  }),
);

const needed = { item: named, use: worded, shares };
const linedBed = fields({
  length: someLength,
  width: someLength,
  courses: counted({ min: 1, max: 10 }),
  section: fields({ thickness: someLength, width: someLength }),
  count: perhaps(counted({ max: 10_000 })),
});
const density = sized("density");

/** Something to buy, boards apart. */
export const need = once(
  byKind("kind", {
    volume: {
      ...needed,
      volume: aVolume,
      density: perhaps(fields({ low: density, likely: density, high: density })),
    },
    count: { ...needed, count: anAmount },
    lining: {
      ...needed,
      beds: listed(linedBed),
      strip: fields({
        overTop: perhaps(aLength),
        underEdge: perhaps(aLength),
        lap: perhaps(aLength),
        cutAlong: perhaps(oneOf(true, false)),
      }),
    },
    floor: {
      ...needed,
      floor: oneOf("sheet", "mesh"),
      beds: listed(linedBed),
      lap: perhaps(aLength),
    },
  }),
);

/** What was bought, as a line of a receipt has it. */
const bought = {
  item: named,
  use: worded,
  size: shown,
  count: anAmount,
  price: aSum,
  form: perhaps(forms),
  board: perhaps(fields({ section: named, timber: worded })),
  delivered: perhaps(oneOf(true, false)),
  mass: perhaps(aMass),
  shares: perhaps(shares),
};
export const boughtList = listed(
  fields({ ...bought, count: numbered({ min: 0, max: 1e6 }), price: sized("money", sumBounds) }),
);

/** A receipt, as `yardReceipt` gives it. */
export const receipt = fields({
  yard: worded,
  lines: listed(fields({ ...bought, total: aSum })),
  goods: aSum,
  delivery: aSum,
  tax: aSum,
  taxIncluded: oneOf(true, false),
  trips: anAmount,
  tripCost: aSum,
  total: aSum,
});

/** What of receipts is shared out to beds. */
export const sharedReceipts = listed(
  fields({ total: aSum, lines: listed(fields({ total: aSum, shares: perhaps(shares) })) }),
);
