import { readArea } from "../../../lib/index.ts";
import { depthAdvice, depthsSwapped } from "./compost.ts";
import { area, count, label, length, number, remark, type Sizes, volume } from "./leaves.ts";
import { list, record } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const fromNothing: Sizes = { zero: "fine" };
const perhaps: Sizes = { zero: "fine", optional: true };
const fortyFeet = readArea("40 sq ft");

const weedCount = (inches: string, weeds: number) =>
  record({
    mulch: label("wood chips"),
    depth: length(inches, fromNothing),
    weeds: number(weeds),
    source: label("common practice"),
  });

export const mulchCases: FolderCases = {
  mulchYears: {
    takes: {
      loss: record({
        mulch: label("bark"),
        lossLow: length("1/2 in", fromNothing),
        loss: length("1 in", { zero: "contradiction" }),
        lossHigh: length("2 in", { zero: "contradiction" }),
        source: label("common practice"),
      }),
      options: record({ depth: length("2 in", fromNothing), years: count(5, { optional: true }) }),
    },
  },
  nitrogenTieUp: { takes: { options: record({ because: remark("bed 3") }, { optional: true }) } },
  weedsLeft: {
    takes: {
      depth: length("2 in", fromNothing),
      counts: list([weedCount("1 in", 60), weedCount("4 in", 11), weedCount("8 in", 3)], {
        empty: "missing",
      }),
    },
  },
  freeBoard: {
    takes: {
      wall: length("11 1/4 in", fromNothing),
      options: record({
        soil: length("8 in", fromNothing),
        dressing: length("1 in", perhaps),
        mulch: length("1 in", perhaps),
      }),
    },
  },
  keepOff: {
    takes: {
      options: record({
        stems: count(6, fromNothing),
        distance: length("3 in", perhaps),
        thickness: length("1/2 in", perhaps),
      }),
    },
  },
  mulchAdvice: {
    takes: {
      depth: length("2 in", fromNothing),
      advice: depthAdvice({ mulch: label("wood chips") }),
    },
    together: [depthsSwapped],
  },
  mulchCover: {
    takes: {
      area: area("32 sq ft", { zero: "contradiction" }),
      options: record({
        depth: length("2 in", fromNothing),
        bare: area("1 sq ft", perhaps),
        bag: volume("2 cu ft", { optional: true }),
      }),
    },
    together: [
      {
        what: "more kept bare than there is",
        with: { "options.bare": fortyFeet.ok ? fortyFeet.value : undefined },
        outcome: "contradiction",
        at: ["bare"],
      },
    ],
  },
};
