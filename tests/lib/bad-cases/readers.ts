import { type Quantity, readQuantity } from "../../../lib/index.ts";
import { choice, date, fixed, number, quantityOf, type Sizes, typed } from "./leaves.ts";
import { leaf, type Outcome, type Part, record, variant } from "./shape.ts";
import type { Cases, FolderCases } from "./walk.ts";

type Texts = Readonly<Record<string, Outcome>>;

// The place is the caller's, written in code, and only handed on.
const path = fixed(["text"]);
const decimal = choice(".", { optional: true });
// A bound may be anything of its kind; a text is read against it, or cannot be.
const bound: Sizes = { optional: true, zero: "fine", negative: "fine", huge: "fine" };

// Bounds above what the text says refuse the text: that is what they are for.
const sizes = ["zero", "negative", "absurdly large"];

/** A quantity for a bound of the kind, tried with every other kind. */
function boundOf(kind: Parameters<typeof readQuantity>[1], text: string): Part {
  const reading = readQuantity(text, kind);
  if (!reading.ok) throw new Error(`no good bound: ${text}`);
  const part = quantityOf(reading.value as Quantity, bound);
  return { ...part, variants: part.variants.filter(({ what }) => !sizes.includes(what)) };
}

/** All four bounds: the least is what the text must reach, the others say nothing new. */
function bounds(kind: Parameters<typeof readQuantity>[1], least: string): Record<string, Part> {
  const low = boundOf(kind, least);
  const high = { ...low, good: { ...(low.good as Quantity), si: 1e9 } };
  return { path, min: low, above: low, max: high, below: high };
}

const options = (kind: Parameters<typeof readQuantity>[1], least: string, unit: string): Part =>
  record(
    {
      path,
      decimal,
      min: boundOf(kind, least),
      unit: leaf(unit, [
        variant("nothing", undefined, "fine"),
        variant("a unit of another kind", kind === "duration" ? "ft" : "h", "wrong-unit"),
        variant("no unit", "fot", "wrong-unit"),
        variant("a number", 3, "wrong-unit"),
        variant("a record", {}, "wrong-unit"),
      ]),
    },
    { optional: true },
  );

function reader(
  kind: Parameters<typeof readQuantity>[1],
  good: string,
  least: string,
  unit: string,
  bad: Texts,
): Cases[] {
  const text = typed(good, {
    "about so much": "unreadable",
    NaN: "unreadable",
    Infinity: "unreadable",
    "1e400": "unreadable",
    ...bad,
  });
  const bare = good.replace(/[^\d.]/g, "");
  const unitOnly = options(kind, least, unit);
  return [
    { takes: { text, options: record(bounds(kind, least), { optional: true }) } },
    { takes: { text: fixed(bare), options: onlyWithUnit(unitOnly) } },
  ];
}

// A bare number needs the unit, so the options can't be left out here.
function onlyWithUnit(part: Part): Part {
  const refusals = new Set(["nothing", "null"]);
  const inner = part.inner.map((each) =>
    each.key === "unit"
      ? {
          ...each,
          part: {
            ...each.part,
            variants: each.part.variants.filter(({ what }) => !refusals.has(what)),
          },
        }
      : each,
  );
  return { ...part, inner, variants: part.variants.filter(({ what }) => !refusals.has(what)) };
}

const lengths = reader("length", "8 ft", "1 in", "ft", {
  "8 fot": "unreadable",
  "8": "wrong-unit",
  "8 lb": "wrong-unit",
  $8: "unreadable",
  "-8 ft": "too-small",
  "0 ft": "too-small",
});
const areas = reader("area", "32 sq ft", "1 sq ft", "sq ft", {
  "32": "wrong-unit",
  "32 ft": "wrong-unit",
  "-32 sq ft": "too-small",
  "0 sq ft": "too-small",
});
const volumes = reader("volume", "2 cu ft", "1 cu in", "cu ft", {
  "2": "wrong-unit",
  "2 lb": "wrong-unit",
  "2 sq ft": "wrong-unit",
  "-2 cu ft": "too-small",
  "0 L": "too-small",
});
const masses = reader("mass", "40 lb", "1 oz", "lb", {
  "40": "wrong-unit",
  "40 L": "wrong-unit",
  "1 ton": "unreadable",
  "-40 lb": "too-small",
});
const durations = reader("duration", "2 h", "1 s", "h", {
  "2": "wrong-unit",
  "2 ft": "wrong-unit",
  "-2 h": "too-small",
});
const densities = reader("density", "40 lb/cu ft", "1 kg/m3", "lb/cu ft", {
  "40": "wrong-unit",
  "40 lb": "wrong-unit",
  "-40 lb/cu ft": "too-small",
});

const numberOptions = record(
  {
    path,
    decimal,
    min: number(1, bound),
    max: number(1e6, bound),
    above: number(0.5, bound),
    below: number(1e7, bound),
  },
  { optional: true },
);
const numberTexts: Texts = {
  three: "unreadable",
  "3 ft": "unreadable",
  NaN: "unreadable",
  Infinity: "unreadable",
  "-3": "too-small",
  "0": "too-small",
  "99,999,999,999": "too-large",
};
function bounded(part: Part): Part {
  const inner = part.inner.map((each) => ({
    ...each,
    part: {
      ...each.part,
      variants: each.part.variants.filter(({ what }) => !sizes.includes(what)),
    },
  }));
  return { ...part, inner };
}

const unknownUnits = [
  variant("nothing", undefined, "fine"),
  variant("no unit", "fot", "wrong-unit"),
  variant("a number", 3, "wrong-unit"),
  variant("a record", {}, "wrong-unit"),
];
const moneyUnit = leaf("$", [...unknownUnits, variant("a length", "ft", "wrong-unit")]);
const lengthUnits = [...unknownUnits, variant("a volume", "cu ft", "wrong-unit")];

export const readerCases: FolderCases = {
  readArea: areas,
  readChoice: {
    takes: {
      text: typed("sides", { sideways: "unknown" }),
      options: record({ path, choices: fixed(["sides", "ends"]) }),
    },
  },
  readCount: {
    takes: {
      text: typed("12", { ...numberTexts, "3.5": "unreadable" }),
      options: bounded(numberOptions),
    },
  },
  readDate: {
    takes: {
      text: typed("2026-04-25", {
        "4/5/2026": "unreadable",
        "2026-13-01": "unreadable",
        "2026-02-30": "unreadable",
        "0000": "unreadable",
        "12026": "unreadable",
        "1850": "too-small",
        "2150": "too-large",
        NaN: "unreadable",
        "-2026": "unreadable",
      }),
      options: record(
        {
          path,
          min: date({ year: 1900 }, { optional: true }),
          max: date({ year: 2100 }, { optional: true }),
          precision: choice("year", { optional: true }),
        },
        { optional: true },
      ),
    },
  },
  readDensity: densities,
  readDuration: durations,
  readLength: lengths,
  readMass: masses,
  readMoney: {
    takes: {
      text: typed("23.50", {
        "about so much": "unreadable",
        "12 XYZ": "unreadable",
        "$12 €": "unreadable",
        "12 ft": "wrong-unit",
        NaN: "unreadable",
        "-1": "too-small",
      }),
      options: record({ ...bounds("money", "0.01"), decimal, unit: moneyUnit }, { optional: true }),
    },
  },
  readNumber: {
    takes: { text: typed("12", numberTexts), options: bounded(numberOptions) },
  },
  readPercent: {
    takes: {
      text: typed("12 %", {
        twelve: "unreadable",
        "12 ft": "unreadable",
        "-12 %": "too-small",
        "120 %": "too-large",
        NaN: "unreadable",
      }),
      options: bounded(
        record(
          {
            path,
            decimal,
            min: number(0, bound),
            max: number(1, bound),
            above: number(-1, bound),
            below: number(2, bound),
            unit: leaf("%", [
              variant("nothing", undefined, "fine"),
              variant("another unit", "ft", "unknown"),
              variant("a number", 100, "unknown"),
            ]),
          },
          { optional: true },
        ),
      ),
    },
  },
  readQuantity: {
    takes: {
      text: typed("8 ft", { "8 lb": "wrong-unit", feet: "unreadable" }),
      kind: choice("length"),
      options: record(
        { ...bounds("length", "1 in"), decimal, unit: leaf("in", lengthUnits) },
        { optional: true },
      ),
    },
  },
  readUnit: {
    takes: {
      text: typed("lb/ft3", { fot: "unreadable", "3": "fine", NaN: "unreadable" }),
      options: record({ path }, { optional: true }),
    },
  },
  readVolume: volumes,
  readYesNo: {
    takes: {
      text: typed("yes", { perhaps: "unreadable", "1": "unreadable" }),
      options: record({ path }, { optional: true }),
    },
  },
};
