import { describe, it } from "vitest";
import { shareLeft, year, yearlyRate } from "../../lib/index.ts";
import { published } from "./compare.ts";
import { knownDifference } from "./known-difference.ts";

// NMI, Handboek Bemesting, as a Dutch soil laboratory's page of 9 March 2018 prints it: organic matter
// and what is left of it after a year, in kg of each tonne, and their quotient.
const left = (organic: number, effective: number) => effective / organic;

describe("decay, what is left of composts after a year", () => {
  it.each([
    ["mushroom compost", 211, 106, "0.50"],
    ["vegetable, fruit and garden compost", 242, 218, "0.90"],
  ])("%s: %i kg, of which %i, a share of %s (READ)", (_, organic, effective, printed) => {
    published(shareLeft(yearlyRate(left(organic, effective)), year), printed);
  });

  it("green compost: 179 kg, of which 134, printed as 0.90 (READ)", () => {
    knownDifference(
      left(179, 134),
      "0.90",
      "134 of 179 is 0.75: the column was raised to 0.90 and the masses were not",
    );
    published(shareLeft(yearlyRate(left(179, 134)), year), "0.75");
  });
});
