import { assertType, describe, expectTypeOf, it } from "vitest";
import {
  type Area,
  amount,
  Checks,
  cubicYard,
  type Density,
  type Duration,
  foot,
  greatest,
  hour,
  inch,
  type Length,
  least,
  less,
  type Mass,
  type Money,
  minus,
  money,
  negative,
  over,
  type PricePerArea,
  type PricePerLength,
  type PricePerMass,
  type PricePerVolume,
  plus,
  pound,
  power,
  printQuantity,
  type Reading,
  readLength,
  readQuantity,
  requireChoice,
  requireQuantity,
  roundUpTo,
  same,
  squareFoot,
  sumOf,
  times,
  type Volume,
  zeroOf,
} from "../../../lib/index.ts";

const length: Length = foot;
const area: Area = squareFoot;
const volume: Volume = cubicYard;
const mass: Mass = pound;
const duration: Duration = hour;
const price: Money = money(5, "USD");

describe("products and quotients", () => {
  it("have the dimension of the trade", () => {
    expectTypeOf(times(length, length)).toEqualTypeOf<Area>();
    expectTypeOf(times(area, length)).toEqualTypeOf<Volume>();
    expectTypeOf(times(times(length, 2), inch)).toEqualTypeOf<Area>();
    expectTypeOf(over(volume, area)).toEqualTypeOf<Length>();
    expectTypeOf(over(mass, volume)).toEqualTypeOf<Density>();
    expectTypeOf(times(over(mass, volume), volume)).toEqualTypeOf<Mass>();
    expectTypeOf(over(price, length)).toEqualTypeOf<PricePerLength>();
    expectTypeOf(over(price, area)).toEqualTypeOf<PricePerArea>();
    expectTypeOf(over(price, volume)).toEqualTypeOf<PricePerVolume>();
    expectTypeOf(over(price, mass)).toEqualTypeOf<PricePerMass>();
    expectTypeOf(times(over(price, volume), volume)).toEqualTypeOf<Money>();
    expectTypeOf(over(length, length)).toEqualTypeOf<number>();
    expectTypeOf(times(over(1, duration), duration)).toEqualTypeOf<number>();
    expectTypeOf(times(3, length)).toEqualTypeOf<Length>();
    expectTypeOf(times(3, 4)).toEqualTypeOf<number>();
    expectTypeOf(power(length, 3)).toEqualTypeOf<Volume>();
    expectTypeOf(power(length, 2)).toEqualTypeOf<Area>();
    expectTypeOf(power(2, 3)).toEqualTypeOf<number>();
  });
});

describe("sums and comparisons", () => {
  it("keep the kind", () => {
    expectTypeOf(plus(length, inch)).toEqualTypeOf<Length>();
    expectTypeOf(minus(price, money(1))).toEqualTypeOf<Money>();
    expectTypeOf(plus("bed ", 3)).toEqualTypeOf<string>();
    expectTypeOf(plus(1, 2)).toEqualTypeOf<number>();
    expectTypeOf(negative(area)).toEqualTypeOf<Area>();
    expectTypeOf(least(length, inch)).toEqualTypeOf<Length>();
    expectTypeOf(greatest(1, 2)).toEqualTypeOf<number>();
    expectTypeOf(sumOf([volume, volume])).toEqualTypeOf<Volume>();
    expectTypeOf(sumOf([] as Volume[], zeroOf(cubicYard))).toEqualTypeOf<Volume>();
    expectTypeOf(roundUpTo(volume, cubicYard)).toEqualTypeOf<Volume>();
    expectTypeOf(amount(length, inch)).toEqualTypeOf<number>();
    expectTypeOf(same(length, mass)).toEqualTypeOf<boolean>();
  });

  it("refuse two kinds", () => {
    // @ts-expect-error an area is not added to a volume
    plus(area, volume);
    // @ts-expect-error nor taken from one
    minus(volume, area);
    // @ts-expect-error a bare number is not added to a length
    plus(length, 3);
    // @ts-expect-error nor a length to a number
    plus(3, length);
    // @ts-expect-error money is not compared with a mass
    less(price, mass);
    // @ts-expect-error nor a length with a number
    less(length, 8);
    // @ts-expect-error lengths and volumes have no sum
    sumOf([length, volume]);
    // @ts-expect-error nor a least
    least(length, volume);
    // @ts-expect-error a volume is not measured in feet
    amount(volume, foot);
    // @ts-expect-error a volume is not rounded to a length
    roundUpTo(volume, foot);
    // @ts-expect-error text is not multiplied
    times("3", length);
    // @ts-expect-error nothing is not added
    plus(undefined, length);
  });
});

function boardsOf(lengthOfBoard: Length): Length {
  return lengthOfBoard;
}
function priceOf(bill: Money): Money {
  return bill;
}

describe("arguments", () => {
  it("take their own kind only", () => {
    boardsOf(inch);
    priceOf(times(over(price, volume), volume));
    // @ts-expect-error a number is no length
    boardsOf(96);
    // @ts-expect-error an area is no length
    boardsOf(area);
    // @ts-expect-error a number is no money
    priceOf(5);
    // @ts-expect-error a price per volume is no money
    priceOf(over(price, volume));
    // @ts-expect-error money is no number
    const bare: number = price;
    // @ts-expect-error a length is no number
    Math.max(length, bare);
    // @ts-expect-error a quantity cannot be changed
    length.si = 3;
  });
});

describe("readers and guards", () => {
  it("give the kind they are asked for", () => {
    expectTypeOf(readLength("8 ft")).toEqualTypeOf<Reading<Length>>();
    expectTypeOf(readQuantity("8 lb", "mass")).toEqualTypeOf<Reading<Mass>>();
    expectTypeOf(requireQuantity(inch, "length", ["x"])).toEqualTypeOf<Length>();
    expectTypeOf(requireChoice("a", ["a", "b"], ["x"])).toEqualTypeOf<"a" | "b">();
    expectTypeOf(printQuantity(length)).toEqualTypeOf<string>();
    assertType<Checks>(new Checks().quantity(inch, "length", ["x"], { min: inch }));
  });

  it("take bounds of that kind only", () => {
    // @ts-expect-error a mass does not bound a length
    readLength("8 ft", { min: pound });
    // @ts-expect-error a number does not either
    readLength("8 ft", { max: 100 });
    // @ts-expect-error nor in a guard
    requireQuantity(inch, "length", ["x"], { min: pound });
    // @ts-expect-error a misspelt option
    printQuantity(length, { sistem: "us" });
    // @ts-expect-error an unknown kind
    readQuantity("8 lb", "weight");
  });
});
