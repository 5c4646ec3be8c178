import { readLength } from "../../../lib/index.ts";
import { choice, count, label, length, type Sizes, yesNo } from "./leaves.ts";
import { list, record } from "./shape.ts";
import type { FolderCases } from "./walk.ts";

const optional: Sizes = { optional: true };
const perhaps: Sizes = { zero: "fine", optional: true };
const inches = (n: number) => {
  const reading = readLength(`${n} in`);
  return reading.ok ? reading.value : undefined;
};

const frame = {
  length: length("8 ft"),
  width: length("4 ft"),
  courses: count(2),
  section: record({ thickness: length("1 1/2 in"), width: length("11 1/4 in") }),
};
const lined = record({ name: label("A-1"), count: count(2, perhaps), ...frame });
const strip = {
  overTop: length("1 in", perhaps),
  underEdge: length("1 in", perhaps),
  lap: length("12 in", optional),
};
const roll = record({ width: length("4 ft"), length: length("50 ft") });

export const linerCases: FolderCases = {
  bedFloor: {
    takes: {
      frame: record(frame),
      options: record({ kind: choice("mesh"), roll, lap: length("6 in", perhaps) }),
    },
    together: [
      {
        what: "a lap as wide as the roll",
        with: { "options.roll.width": inches(12), "options.lap": inches(12) },
        outcome: "contradiction",
        at: ["lap"],
      },
    ],
  },
  linerForBeds: {
    takes: {
      beds: list([lined, lined], { empty: "fine" }),
      options: record({
        ...strip,
        cutAlong: yesNo(true, optional),
        roll,
        stapleSpacing: length("12 in", optional),
      }),
    },
    together: [
      {
        what: "strips that no roll is wide enough for",
        with: { "options.roll.width": inches(6), "options.lap": inches(6) },
        outcome: "no-fit",
        at: ["roll", "width"],
      },
    ],
  },
  linerStrip: {
    takes: { frame: record(frame), options: record(strip, { optional: true }) },
    together: [
      {
        what: "boards as thick as half the bed",
        with: { "frame.width": inches(12), "frame.section.thickness": inches(6) },
        outcome: "contradiction",
        at: ["width"],
      },
      {
        what: "a sheet turned farther than the board is thick",
        with: { "options.overTop": inches(2) },
        outcome: "too-large",
        at: ["overTop"],
      },
    ],
  },
  staples: {
    takes: {
      perimeter: length("24 ft"),
      options: record(
        { spacing: length("12 in", optional), rows: count(1, optional) },
        { optional: true },
      ),
    },
  },
};
