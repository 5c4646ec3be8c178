import { problemCodes } from "../check/index.ts";
import {
  aSum,
  aVolume,
  need,
  priceLine,
  receipt,
  section,
  someLength,
  yardTerms,
} from "../cost/shapes.ts";
import { checkBoardPlan, checkCuts } from "../lumber/check-board-plan.ts";
import { certificateShape } from "../lumber/check-certificate.ts";
import { currencyCodes, foot, kilogramPerCubicMetre, times } from "../measure/index.ts";
import {
  counted,
  dated,
  fields,
  listed,
  named,
  numbered,
  once,
  oneOf,
  orNull,
  perhaps,
  type Shape,
  sized,
  worded,
} from "../measure/shape.ts";

const nothing = times(foot, 0);
const depth = sized("length", { min: nothing, max: times(foot, 20) });
const side = sized("length", { above: nothing, max: times(foot, 100) });
const farthest = times(foot, 10_000);
const place = sized("length", { min: times(farthest, -1), max: farthest });
const row = perhaps(numbered({ min: 0, max: 1e9 }));

/** A bed, as `toBed` makes it. */
export const bed = once(
  fields({
    name: named,
    length: side,
    width: side,
    courses: counted({ min: 1, max: 10 }),
    section,
    timber: perhaps(worded),
    lap: oneOf("sides", "ends"),
    cap: orNull(section),
    capReach: perhaps(sized("length", { min: nothing, max: foot })),
    capJoint: perhaps(oneOf("mitred", "butted")),
    stakes: counted({ max: 50 }),
    stakeSection: perhaps(section),
    stakeLength: perhaps(side),
    wallHeight: depth,
    liner: oneOf(true, false),
    soilDepth: depth,
    depthNow: depth,
    built: perhaps(dated),
    place: perhaps(fields({ east: place, north: place, turned: oneOf(true, false) })),
    assumed: listed(named),
    row,
  }),
);

/** Like pieces of a bed. */
export const piece = once(
  fields({
    name: named,
    bed: worded,
    part: oneOf("side", "end", "cap-side", "cap-end", "stake", "other"),
    section,
    timber: perhaps(worded),
    length: side,
    count: counted({ max: 100_000 }),
    mitred: perhaps(oneOf(true, false)),
    stakesAt: perhaps(listed(side)),
  }),
);

const keptBoards = once(
  fields({
    section,
    length: someLength,
    sound: someLength,
    count: counted({ max: 100_000 }),
    timber: perhaps(worded),
    bought: perhaps(dated),
    row,
  }),
);

const handPiece = once(
  fields({
    piece: named,
    section,
    length: someLength,
    count: counted({ max: 100_000 }),
    timber: perhaps(worded),
  }),
);

const path: Shape = listed((checks, step, place) => {
  if (typeof step === "number") checks.number(step, place);
  else checks.text(step, place);
});
const remark = fields({ path, text: worded });
const problem = fields({
  code: oneOf(...problemCodes),
  path,
  allowed: named,
  received: worded,
  remedy: named,
  also: perhaps(listed(path)),
});

/** Whatever it is: the function that works with it says what is wrong. */
const whatever: Shape = () => undefined;

const rows: Readonly<Record<string, Shape>> = {
  // `toBed` looks at each field of a bed as written.
  beds: fields({ row }),
  onHand: keptBoards,
  yards: yardTerms,
  prices: priceLine,
  pieces: handPiece,
};

/** A reading of one of the garden's tables, by the table's name. */
export function readingOf(table: string): Shape {
  return fields({
    table: named,
    rows: listed(rows[table] ?? whatever),
    given: counted(),
    problems: listed(problem),
    remarks: listed(remark),
  });
}

export const handPieces = listed(handPiece);

const caution = fields({
  id: named,
  fact: named,
  advice: named,
  defersTo: named,
  sources: listed(named),
  because: perhaps(worded),
});
export const cautions = listed(caution);

/** A plan of boards, as `planBoards` makes it; null where there is none. */
const boardPlan = orNull(
  once((checks, value, path) => {
    checks.attempt(() => {
      checks.add(...checkBoardPlan(value).problems);
    });
    planParts(checks, value, path);
  }),
);
const planParts = fields({
  cuts: listed(fields({ layout: counted() })),
  certificate: certificateShape,
});

/** What of a plan of boards says how each is cut; null where there is no plan. */
export const cutPlan = orNull(once(fields({ cuts: checkCuts })));

export const needs = listed(need);

const notSold = listed(fields({ need, why: named }));
const ways = listed(fields({ yard: named, way: oneOf("fetched", "delivered") }));
const proof = fields({ kind: oneOf("cheapest", "within"), words: named });

/** What is bought for a garden, as `planGardenBuying` makes it. */
export const gardenBuying = fields({
  buying: fields({ boards: boardPlan, notSold, ways }),
  problem: fields({ boards: fields({ pieces: listed(whatever) }) }),
  receipts: listed(receipt),
  total: aSum,
  proof,
  problems: listed(problem),
  priceProblems: listed(problem),
  currency: oneOf(...currencyCodes),
  remarks: listed(remark),
  cautions,
});

export const priceRows = listed(priceLine);
const share = numbered({ min: 0, max: 0.9 });
const density = sized("density", {
  min: kilogramPerCubicMetre,
  max: times(5000, kilogramPerCubicMetre),
});
const states = ["densityDry", "densityMoist", "densityWet"];
const densities = states.flatMap((state) => [`${state}Low`, state, `${state}High`]);

const partOfAll = perhaps(numbered({ min: 0, max: 1 }));
const rate = perhaps(numbered({ min: 0, max: 5 }));

/** A row of the table of materials; what of it is organic may be left out. */
const material = once(
  fields({
    organicLow: partOfAll,
    organic: partOfAll,
    organicHigh: partOfAll,
    organicVolume: partOfAll,
    porosity: partOfAll,
    decayLow: rate,
    decay: rate,
    decayHigh: rate,
    material: named,
    settleLow: share,
    settleLikely: share,
    settleHigh: share,
    ...Object.fromEntries(densities.map((name) => [name, density])),
  }),
);
const item = perhaps(named);
const spread = { material, depth: perhaps(depth), item };
const lap = perhaps(sized("length", { min: nothing, max: times(foot, 4) }));
const spacing = perhaps(sized("length", { above: nothing, max: times(foot, 10) }));
const width = sized("length", { above: nothing, max: foot });

/** What is chosen for a garden besides its frames, its cutting and its money. */
export const chosenGoods = fields({
  fill: listed(fields({ material, share: numbered({ above: 0, max: 1e6 }), item })),
  topDressing: fields({ ...spread, heap: perhaps(aVolume) }),
  mulch: fields(spread),
  liner: perhaps(
    fields({
      roll: perhaps(fields({ width: side, length: someLength })),
      stapleSpacing: spacing,
      floor: perhaps(oneOf("open", "sheet", "mesh")),
      item,
      stapleItem: item,
      floorItem: item,
      prices: perhaps(priceRows),
      overTop: lap,
      underEdge: lap,
      lap,
      cutAlong: perhaps(oneOf(true, false)),
    }),
  ),
  fastening: fields({
    screws: listed(fields({ length: width, diameter: width })),
    plateThickness: perhaps(width),
    platesPerCorner: perhaps(counted({ min: 1, max: 10 })),
    holes: perhaps(counted({ min: 1, max: 40 })),
    seatSpacing: spacing,
    plateItem: item,
    preservativeItem: item,
    prices: perhaps(priceRows),
  }),
  woodDensity: perhaps(density),
});

/** A bill, as `gardenBill` gives it. */
export const bill = once(
  fields({
    receipts: listed(receipt),
    total: aSum,
    notSold,
    byBed: listed(fields({ bed: worded, money: aSum })),
    ways,
    proof,
    boards: boardPlan,
    boardProblems: listed(problem),
    problems: listed(problem),
    remarks: listed(remark),
    cautions,
  }),
);
