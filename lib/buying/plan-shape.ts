import { need, priceLine, receipt, yardTerms } from "../cost/shapes.ts";
import { checkBoardPlan } from "../lumber/check-board-plan.ts";
import { checkBoardProblem } from "../lumber/check-board-problem.ts";
import { certificateShape } from "../lumber/check-certificate.ts";
import {
  Checks,
  currencyCodes,
  inch,
  kilogram,
  kilogramPerCubicMetre,
  times,
} from "../measure/index.ts";
import {
  byKind,
  fields,
  listed,
  named,
  numbered,
  oneOf,
  orNull,
  perhaps,
  type Shape,
  sized,
  worded,
} from "../measure/shape.ts";

/** What another check finds, placed where the part stands. */
function within(check: (value: never) => Checks): Shape {
  return (checks, value, path) => {
    const found = new Checks();
    found.attempt(() => found.add(...check(value as never).problems));
    checks.add(...found.problems.map((each) => ({ ...each, path: [...path, ...each.path] })));
  };
}

/** A buying problem with all it needs. */
export const buyingProblem = fields({
  boards: within(checkBoardProblem),
  needs: listed(need),
  prices: listed(priceLine),
  yards: listed(yardTerms),
  currency: oneOf(...currencyCodes),
  taxIncluded: oneOf(true, false),
  carriesBulk: oneOf(true, false),
  carPayload: perhaps(sized("mass", { above: times(0, kilogram) })),
  woodDensity: perhaps(sized("density", { min: times(0, kilogramPerCubicMetre) })),
});

const way = oneOf("fetched", "delivered");

/** A plan with the fields a plan has, each of its kind; not whether it is right. */
export const buyingPlan = fields({
  boards: within(checkBoardPlan),
  receipts: listed(receipt),
  ways: listed(fields({ yard: named, way })),
  notSold: listed(fields({ need: fields({ item: named, use: worded }) })),
  total: sized("money"),
  proof: byKind("kind", {
    cheapest: { words: named },
    within: { words: named, above: sized("money"), share: numbered({ min: 0 }) },
  }),
  floors: listed(
    fields({
      yards: listed(fields({ yard: named, way })),
      floor: sized("money"),
      dismissed: oneOf(true, false),
      certificate: orNull(certificateShape),
    }),
  ),
});

const kerf = sized("length", { min: times(0, inch), max: inch });
const sawn = fields({ certificate: fields({ kerf }) });

/** What of a plan the lists for the yard are made from. */
export const listedPlan = fields({
  boards: (checks, value, path) => {
    within(checkBoardPlan)(checks, value, path);
    sawn(checks, value, path);
  },
  receipts: listed(receipt),
  notSold: listed(fields({ need: fields({ item: named, use: worded }) })),
});
