// Richard and Trautmann, Cornell: moisture of a mix, as a copy of the text works it.
// Left out: 3.5 kg of leaves for a ratio of 30, and the table of ratios: recalled, not seen.
import { describe, it } from "vitest";
import { amount, carbonNitrogen, kilogram, moisturePartner, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

const kg = (n: number) => times(n, kilogram);

describe("compost, Cornell's moisture of a mix", () => {
  const leaves = moisturePartner(kg(10), { moisture: 0.77, partner: 0.35, goal: 0.6 });

  it("10 kg of grass at 77 % take 6.8 kg of leaves at 35 % to come to 60 % (READ-2nd)", () => {
    published(amount(leaves, kilogram), "6.8");
  });

  it("and the mix of the two is at 60 % (READ-2nd)", () => {
    const mix = carbonNitrogen([
      { mass: kg(10), carbon: 0.45, nitrogen: 0.024, moisture: 0.77 },
      { mass: leaves, carbon: 0.5, nitrogen: 0.0075, moisture: 0.35 },
    ]);
    published(mix.moisture * 100, "60");
  });
});
