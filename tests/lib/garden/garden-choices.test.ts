import { describe, expect, it } from "vitest";
import { gardenChoices, kilogramPerCubicMetre, times } from "../../../lib/index.ts";
import { choices } from "./garden.ts";

describe("gardenChoices(spec)", () => {
  it("lets timber, currency and the boards' density hold wherever they count", () => {
    const woodDensity = times(600, kilogramPerCubicMetre);
    const chosen = gardenChoices(
      choices({ frame: { timber: "larch" }, money: { currency: "EUR" }, woodDensity }),
    );
    expect(chosen.cutting).toMatchObject({ timber: "larch", currency: "EUR" });
    expect(chosen.money.woodDensity).toEqual(woodDensity);
  });
});
