import { describe, expect, it } from "vitest";
import { moneyChoices } from "../../../lib/index.ts";

describe("moneyChoices(chosen)", () => {
  it("has prices before tax, the cheapest yard, loose goods brought", () => {
    expect(moneyChoices()).toMatchObject({
      taxIncluded: false,
      yard: "cheapest",
      carriesBulk: false,
    });
  });

  it("keeps what is given", () => {
    expect(moneyChoices({ taxIncluded: true, currency: "EUR" })).toMatchObject({
      taxIncluded: true,
      currency: "EUR",
    });
  });
});
