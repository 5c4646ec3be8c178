// International Code Council, International Building Code, 2009, Table 1806.2: the conversions
// printed below it. A pound-force is the weight of a pound where g is 9.80665 m/s².
import { describe, it } from "vitest";
import { foot, metre, over, pound, second, squareFoot, times } from "../../lib/index.ts";
import { published } from "./compare.ts";

const gravity = over(times(9.80665, metre), times(second, second));
const pressure = over(times(pound, gravity), squareFoot);

describe("measure, IBC 2009", () => {
  it("1 psf is 0.0479 kPa (READ-2nd)", () => {
    published(pressure.si / 1000, "0.0479");
  });

  it("1 psf/ft is 0.157 kPa/m (READ-2nd)", () => {
    published(over(pressure, foot).si / 1000, "0.157");
  });
});
