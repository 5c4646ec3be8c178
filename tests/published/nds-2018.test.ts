import { describe, expect, it } from "vitest";
import { inch, over, penetration, poundForce, times, withdrawal } from "../../lib/index.ts";
import { published } from "./compare.ts";

// National Design Specification for Wood Construction, 2018 edition (American Wood Council).
const perInch = over(poundForce, inch);

describe("fasteners, Table 12.2A, lag screws in withdrawal, lb/in (p. 77; READ)", () => {
  const diametersIn = [1 / 4, 5 / 16, 3 / 8, 1 / 2];
  it.each([
    [0.55, ["260", "307", "352", "437"]],
    [0.5, ["225", "266", "305", "378"]],
    [0.43, ["179", "212", "243", "302"]],
    [0.42, ["173", "205", "235", "291"]],
    [0.37, ["143", "169", "194", "241"]],
    [0.36, ["137", "163", "186", "231"]],
  ] as const)("specific gravity %s", (specificGravity, printed) => {
    printed.forEach((value, at) => {
      const diameter = times(inch, diametersIn[at] ?? 0);
      const held = withdrawal({ fastener: "lag screw", specificGravity, diameter });
      published(over(held, perInch), value);
    });
  });
});

describe("fasteners, sections 12.1.4 to 12.1.6 (READ-2nd, in the documentation of a structural library)", () => {
  const least = (fastener: "wood screw" | "nail" | "lag screw") =>
    over(
      penetration({ fastener, length: inch, diameter: times(inch, 0.1), through: times(inch, 0) })
        .least,
      times(inch, 0.1),
    );

  it("asks six diameters of nails and wood screws, four of lag screws, tip included", () => {
    published(least("nail"), "6");
    published(least("wood screw"), "6");
    published(least("lag screw"), "4");
  });

  it("reckons lag screws in end grain at three quarters (12.2.1)", () => {
    const lag = {
      fastener: "lag screw",
      specificGravity: 0.5,
      diameter: times(inch, 0.25),
    } as const;
    published(withdrawal({ ...lag, grain: "end" }).si / withdrawal(lag).si, "0.75");
  });

  it("takes wood screws by 2850 G2 D (12.2-2, as an engineering reference page prints it; READ)", () => {
    const diameter = times(inch, 0.1);
    const held = withdrawal({ fastener: "wood screw", specificGravity: 1, diameter });
    published(over(held, perInch) / 0.1, "2850");
  });

  it("lets no screw bear on end grain in withdrawal (READ-2nd)", () => {
    const joint = { specificGravity: 0.5, diameter: times(inch, 0.19), grain: "end" } as const;
    expect(withdrawal({ ...joint, fastener: "wood screw" }).si).toBe(0);
  });
});
