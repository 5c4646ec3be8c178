import { describe, it } from "vitest";
import {
  amount,
  centimetre,
  inch,
  kilogram,
  type Lift,
  liftingIndex,
  pound,
  recommendedWeightLimit,
  times,
} from "../../lib/index.ts";
import { published } from "./compare.ts";
import { knownDifference } from "./known-difference.ts";

// Waters, Putz-Anderson and Garg, Applications Manual for the Revised NIOSH Lifting Equation,
// DHHS (NIOSH) 94-110, 1994, revised 9/2021.
const cm = (n: number) => times(centimetre, n);
const best: Lift = { reach: cm(25), from: cm(75), to: cm(75), grip: "good" };
const shares = (lift: Partial<Lift>) => recommendedWeightLimit({ ...best, ...lift }).shares;

describe("safety, multipliers, metric tables (READ-2nd, as a Canadian occupational health centre prints them)", () => {
  it.each([
    [25, "1.00"],
    [30, ".83"],
    [40, ".63"],
    [50, ".50"],
    [60, ".42"],
  ])("horizontal %s cm: %s", (reach, printed) =>
    published(shares({ reach: cm(reach) }).reach, printed),
  );

  it.each([
    [0, ".78"],
    [30, ".87"],
    [50, ".93"],
    [70, ".99"],
    [100, ".93"],
    [150, ".78"],
    [175, ".70"],
  ])("vertical %s cm: %s", (from, printed) =>
    published(shares({ from: cm(from), to: cm(from) }).height, printed),
  );

  it.each([
    [25, "1.00"],
    [40, ".93"],
    [55, ".90"],
    [100, ".87"],
    [145, ".85"],
    [175, ".85"],
  ])("travel %s cm: %s", (travel, printed) =>
    published(shares({ from: cm(0), to: cm(travel) }).travel, printed),
  );

  it.each([
    [0, "1.00"],
    [30, ".90"],
    [45, ".86"],
    [60, ".81"],
    [90, ".71"],
  ])("turn of %s degrees: %s", (turn, printed) => published(shares({ turn }).turn, printed));
});

describe("safety, Table 5, frequency multipliers (p. 15; READ)", () => {
  const pace = (liftsPerMinute: number, duration: NonNullable<Lift["duration"]>, fromIn: number) =>
    shares({ liftsPerMinute, duration, from: times(inch, fromIn) }).pace;

  it.each([
    [0.2, "1.00", ".95", ".85"],
    [1, ".94", ".88", ".75"],
    [3, ".88", ".79", ".55"],
    [5, ".80", ".60", ".35"],
    [8, ".60", ".35", ".18"],
    [12, ".37", ".00", ".00"],
  ] as const)("%s lifts a minute, hands under 30 in", (lifts, hour, twoHours, day) => {
    published(pace(lifts, "up to 1 h", 20), hour);
    published(pace(lifts, "up to 2 h", 20), twoHours);
    published(pace(lifts, "up to 8 h", 20), day);
  });

  it.each([
    [9, ".52", ".30", ".15"],
    [12, ".37", ".21", ".00"],
    [15, ".28", ".00", ".00"],
  ] as const)("%s lifts a minute, hands at 30 in or over", (lifts, hour, twoHours, day) => {
    published(pace(lifts, "up to 1 h", 30), hour);
    published(pace(lifts, "up to 2 h", 30), twoHours);
    published(pace(lifts, "up to 8 h", 30), day);
  });
});

describe("safety, Table 7, coupling multipliers (p. 18; READ-2nd)", () => {
  it.each([
    ["good", "1.00", "1.00"],
    ["fair", ".95", "1.00"],
    ["poor", ".90", ".90"],
  ] as const)("%s", (grip, low, high) => {
    published(shares({ grip, from: cm(70) }).grip, low);
    published(shares({ grip, from: cm(75) }).grip, high);
  });
});

describe("safety, Example 4, package inspection (pp. 44-46; READ-2nd)", () => {
  const twin: Lift = { reach: cm(25), from: cm(55), to: cm(150), liftsPerMinute: 3, grip: "fair" };
  const lift: Lift = { ...twin, from: times(inch, 22), to: times(inch, 59) };

  it("limits the load to 34.9 lb at its origin", () => {
    knownDifference(
      amount(recommendedWeightLimit(lift).limit, pound),
      "34.9",
      "the manual rounds every multiplier to two decimals (p. 29) and reckons with 51 lb, which is not 23 kg",
    );
    published(amount(recommendedWeightLimit(lift).limit, pound), "34.9", 0.25);
  });

  it("gives 15.7 kg for its metric twin of 12 kg (READ, a worked exercise)", () => {
    const { limit } = recommendedWeightLimit(twin);
    published(amount(limit, kilogram), "15.7");
    knownDifference(
      liftingIndex(times(kilogram, 12), limit),
      "0.76",
      "the exercise divides by the limit of its rounded multipliers, 15.72 kg",
    );
  });
});
