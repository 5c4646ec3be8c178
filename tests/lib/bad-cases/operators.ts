import { foot, inch, metre, money, type Quantity, squareFoot, times } from "../../../lib/index.ts";
import { fixed, price, type Sizes } from "./leaves.ts";
import { but, leaf, list, type Outcome, type Part, variant } from "./shape.ts";
import type { Cases, FolderCases } from "./walk.ts";

// Operators name both values, printed, in place of a field.
const pathless = "an operator names both of its values";

/** What is never an operand, whatever the other is. */
const never = [
  variant("nothing", undefined, "missing"),
  variant("null", null, "missing"),
  variant("a record", { metres: 3 }, "wrong-unit"),
  variant("a list", [3], "wrong-unit"),
  variant("true", true, "wrong-unit"),
  variant("NaN", Number.NaN, "wrong-unit", "unreadable"),
];

interface Allowed {
  /** What a bare number, a quantity of another kind and a text lead to. */
  readonly number: Outcome;
  readonly other: Outcome;
  readonly text?: Outcome;
  readonly zero?: Outcome;
  readonly negative?: Outcome;
}

/** A quantity as an operand: of any size, but finite. */
function operand(good: Quantity, allowed: Allowed): Part {
  const { number, other, text = "wrong-unit", zero = "fine", negative = "fine" } = allowed;
  const sized = (si: number) => ({ ...good, si });
  return leaf(good, [
    ...never,
    variant("a bare number", 3, number),
    variant("text", "6 fot", text),
    variant("another dimension", squareFoot, other),
    variant("a quantity of NaN", sized(Number.NaN), "unreadable", "wrong-unit"),
    variant("an endless quantity", sized(Number.POSITIVE_INFINITY), "unreadable", "wrong-unit"),
    variant("zero", sized(0), zero),
    variant("negative", sized(-good.si), negative),
    variant("absurdly large", sized(1e30), "fine"),
  ]);
}

/** A number as an operand. Text joins it in `plus` and stands beside no number elsewhere. */
function numberOperand(good: number, text: Outcome = "wrong-unit", zero: Outcome = "fine"): Part {
  return leaf(good, [
    ...never,
    variant("text", "3", text),
    variant("a quantity", metre, "wrong-unit", "fine"),
    variant("infinity", Number.POSITIVE_INFINITY, "unreadable", "wrong-unit", "fine"),
    variant("zero", 0, zero),
    variant("negative", -good, "fine"),
    variant("absurdly large", 1e30, "fine"),
  ]);
}

const alike: Allowed = { number: "wrong-unit", other: "wrong-unit" };
const anyKind: Allowed = { number: "fine", other: "fine" };
const anySize: Sizes = { zero: "fine", negative: "fine", huge: "fine" };
const dollars = money(5, "USD");
const euros = money(5, "EUR");

const mixed = [
  { what: "two currencies", with: { a: dollars, b: euros }, outcome: "mixed-currency", at: [] },
] as const;

const ofAlike = (more: Partial<Allowed> = {}, text?: Outcome): Cases[] => [
  {
    takes: { a: operand(foot, alike), b: operand(inch, { ...alike, ...more }) },
    together: mixed,
    pathless,
  },
  { takes: { a: numberOperand(7, text), b: numberOperand(2, text, more.zero) }, pathless },
];
const ofAny = (zero: Outcome): Cases[] => [
  {
    takes: { a: operand(foot, anyKind), b: operand(inch, { ...anyKind, zero }) },
    together: mixed,
    pathless,
  },
  { takes: { a: numberOperand(7), b: numberOperand(2, "wrong-unit", zero) }, pathless },
];

// Texts are joined by plus and compared by letters, as in JavaScript; never with a quantity.
const compared: Cases[] = [
  ...ofAlike(),
  { takes: { a: leaf("ash", [...never]), b: leaf("oak", [...never]) }, pathless },
  { takes: { a: leaf({ year: 2003 }, [...never]), b: fixed({ year: 2004 }) }, pathless },
];

const extreme: Cases[] = [
  { takes: { first: operand(foot, alike), second: operand(inch, alike) }, pathless },
  // One alone may be of any kind that can be compared, text included.
  { takes: { first: numberOperand(1, "fine") }, pathless },
  { takes: { first: operand(foot, { ...anyKind, text: "fine" }) }, pathless },
];
const step: Partial<Allowed> = { zero: "too-small", negative: "too-small" };

export const operatorCases: FolderCases = {
  absolute: [
    { takes: { value: operand(foot, anyKind) }, pathless },
    { takes: { value: numberOperand(-3) }, pathless },
  ],
  addMoney: [
    {
      takes: { first: price("5", anySize), second: price("7", anySize) },
      together: [
        {
          what: "two currencies",
          with: { first: dollars, second: euros },
          outcome: "mixed-currency",
          at: [],
        },
      ],
      pathless: "amounts are numbered, not named",
    },
    { takes: { only: price("5", anySize) }, pathless: "amounts are numbered, not named" },
  ],
  amount: {
    takes: { q: operand(foot, alike), unit: operand(inch, { ...alike, zero: "too-small" }) },
    pathless,
  },
  atLeast: compared,
  atMost: compared,
  greatest: extreme,
  least: extreme,
  less: compared,
  minus: ofAlike(),
  more: compared,
  negative: [
    { takes: { value: operand(foot, anyKind) }, pathless },
    { takes: { value: numberOperand(-3) }, pathless },
  ],
  over: ofAny("unreadable"),
  plus: ofAlike({}, "fine"),
  power: [
    {
      takes: {
        base: operand(foot, anyKind),
        exponent: leaf(2, [
          ...never,
          variant("text", "2", "wrong-unit"),
          variant("a quantity", metre, "wrong-unit"),
          variant("a fraction", 0.5, "wrong-unit"),
          variant("the fifth", 5, "wrong-unit"),
          variant("zero", 0, "fine"),
          variant("negative", -2, "fine"),
        ]),
      },
      pathless,
    },
    {
      takes: {
        base: numberOperand(2),
        exponent: but(numberOperand(3), variant("absurdly large", 1e30, "unreadable")),
      },
      pathless,
    },
  ],
  remainder: ofAlike({ zero: "unreadable" }),
  roundUpTo: [
    {
      takes: { value: operand(foot, alike), step: operand(inch, { ...alike, ...step }) },
      pathless,
    },
    {
      takes: {
        value: numberOperand(2.1),
        step: but(
          numberOperand(0.5, "wrong-unit", "too-small"),
          variant("negative", -1, "too-small"),
        ),
      },
      pathless,
    },
  ],
  sumOf: [
    {
      takes: {
        values: list([operand(foot, alike), operand(inch, alike)], { empty: "missing" }),
      },
      pathless,
    },
    {
      takes: {
        values: list([operand(foot, alike)], { empty: "fine" }),
        zero: but(operand(times(0, inch), alike), variant("nothing", undefined, "fine")),
      },
      pathless,
    },
  ],
  times: ofAny("fine"),
  zeroOf: { takes: { unit: operand(foot, { ...anyKind, number: "wrong-unit" }) }, pathless },
};

export const quantityMaker: FolderCases = {
  quantity: {
    takes: {
      si: leaf(3, [
        variant("nothing", undefined, "missing"),
        variant("text", "3", "unreadable"),
        variant("a quantity", metre, "unreadable"),
        variant("NaN", Number.NaN, "unreadable"),
        variant("infinity", Number.POSITIVE_INFINITY, "unreadable"),
        variant("zero", 0, "fine"),
        variant("negative", -3, "fine"),
        variant("absurdly large", 1e30, "fine"),
      ]),
      dim: leaf(dollars.dim, [
        variant("nothing", undefined, "missing"),
        variant("text", "length", "unreadable"),
        variant("a list too short", [1, 0, 0], "unreadable"),
        variant("a record", {}, "unreadable"),
      ]),
      currency: leaf("USD", [
        variant("nothing", undefined, "fine"),
        variant("a number", 7, "unreadable"),
        variant("a record", {}, "unreadable"),
      ]),
    },
  },
};
