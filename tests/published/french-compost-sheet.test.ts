import { describe, it } from "vitest";
import { shareLeft, times, week, year, yearlyRate } from "../../lib/index.ts";
import { published } from "./compare.ts";

// A French technical sheet on a compost of food waste (NF U 44-051, type 5a1), for a tonne as it comes:
// organic matter 29.0 per cent, half of it carbon, of which 20 per cent is mineralised in 91 days.
describe("decay, stable organic matter of a compost", () => {
  const organic = 1000 * 0.29;
  const carbon = organic / 2;
  const ninetyOneDays = times(13, week);
  const left = carbon * shareLeft(yearlyRate(0.8, ninetyOneDays), ninetyOneDays);

  it("290 kg organic, 145 kg carbon (READ)", () => {
    published(organic, "290");
    published(carbon, "145");
  });

  it("29 kg mineralised, 116 kg left: 232 kg stable organic matter (READ)", () => {
    published(carbon - left, "29");
    published(left, "116");
    published(2 * left, "232");
  });

  it("the rate of these 13 weeks would leave less than half in a year: it slows down (DERIVED)", () => {
    published(shareLeft(yearlyRate(0.8, ninetyOneDays), year), "0.41");
  });
});
