import { choice, count, label, length, mass, number, remark, type Sizes, yesNo } from "./leaves.ts";
import { but, record, variant } from "./shape.ts";
import type { Cases, FolderCases } from "./walk.ts";

const perhaps: Sizes = { zero: "fine", optional: true };
const because = { because: remark("bed 3") };
const caution: Cases = { takes: { options: record(because, { optional: true }) } };

// null says that nobody knows.
const unknown = variant("null", null, "fine");
const facts = {
  treated: but(yesNo(true, { optional: true }), unknown),
  boughtYear: but(count(1998, { optional: true }), unknown),
  sawn: yesNo(false, { optional: true }),
};
const wall = length("36 in");

export const safetyCases: FolderCases = {
  buriedLines: caution,
  cautionsForLift: {
    takes: { mass: mass("60 lb", { zero: "fine" }), options: record(because, { optional: true }) },
  },
  cautionsForOldBoard: { takes: { facts: record({ ...facts, ...because }) } },
  cautionsForWall: { takes: { height: wall, options: record(because, { optional: true }) } },
  leadInOldSoil: caution,
  lifting: {
    takes: { options: record({ ...because, mass: mass("60 lb", perhaps) }, { optional: true }) },
  },
  liftingIndex: {
    takes: { mass: mass("60 lb", { zero: "fine" }), limit: mass("30 lb") },
  },
  localCodes: caution,
  mayHoldArsenic: { takes: { facts: record({ ...facts, because: label("row 3") }) } },
  nailsInOldBoards: caution,
  neverBurn: caution,
  oldTreatedWood: caution,
  plasticAndDrainage: caution,
  recommendedWeightLimit: {
    takes: {
      lift: record({
        reach: length("15 in", { zero: "fine" }),
        from: length("20 in", { zero: "fine" }),
        to: length("40 in", { zero: "fine" }),
        at: choice("end", { optional: true }),
        turn: number(30, perhaps),
        liftsPerMinute: number(2, perhaps),
        duration: choice("up to 2 h", { optional: true }),
        grip: choice("good", { optional: true }),
      }),
    },
  },
  sawingTreatedWood: caution,
  wallHeight: {
    takes: {
      options: record(
        { ...because, height: length("36 in", { optional: true }) },
        { optional: true },
      ),
    },
  },
};
