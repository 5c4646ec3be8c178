import {
  type BuyingProblem,
  cubicFoot,
  inch,
  kilogramPerCubicMetre,
  money,
  times,
} from "../../../lib/index.ts";
import { board, piece } from "../lumber/make.ts";

const kilograms = (perCubicMetre: number) => times(perCubicMetre, kilogramPerCubicMetre);

interface Car {
  /** Longest that goes on the car. Default: any. */
  readonly loadLengthIn?: number;
}

/** Two yards of our own invention, boards in three lengths, and bags of compost of 40 lb. */
export function twoYards({ loadLengthIn }: Car = {}): BuyingProblem {
  const at = (yard: string, prices: readonly [number, number][]) =>
    prices.map(([feet, price]) => board(12 * feet, 0, { yard, price: money(price, "USD") }));
  const car =
    loadLengthIn === undefined ? {} : { loadLength: times(loadLengthIn, inch), cutAtYard: true };
  const bag = { kind: "goods", item: "compost", form: "bag", limit: undefined } as const;
  return {
    boards: {
      pieces: [piece(96, 8), piece(45, 8), piece(70, 5), piece(22, 9)],
      stock: [
        ...at("Ash", [
          [8, 20],
          [12, 29],
          [16, 37.5],
        ]),
        ...at("Elm", [
          [8, 19.2],
          [12, 31],
        ]),
      ],
      kerf: times(0.125, inch),
      shortfall: times(0.125, inch),
      ...car,
    },
    needs: [
      {
        ...{ kind: "volume", item: "compost", use: "top-dressing" },
        volume: times(27, cubicFoot),
        density: {
          low: kilograms(640),
          likely: kilograms(640),
          high: kilograms(640),
          basis: ["common practice"],
        },
        shares: [],
      },
    ],
    prices: [
      {
        ...bag,
        row: 1,
        yard: "Ash",
        price: money(4.95, "USD"),
        from: 1,
        step: 1,
        size: { kind: "volume", volume: cubicFoot },
      },
    ],
    yards: [
      { yard: "Ash", tax: 0.06, taxOn: "goods", tripCost: money(6, "USD") },
      { yard: "Elm", tax: 0.06, taxOn: "goods", tripCost: money(9, "USD") },
    ],
    currency: "USD",
    taxIncluded: false,
    carriesBulk: false,
    woodDensity: kilograms(600),
  };
}
