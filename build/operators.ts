import {
  atLeast,
  atMost,
  less,
  minus,
  more,
  negative,
  over,
  plus,
  power,
  remainder,
  same,
  times,
} from "../lib/index.ts";

/** The library's arithmetic by the names that stand for the operators of a formula. */
export const operators = {
  plus,
  minus,
  times,
  over,
  remainder,
  power,
  negative,
  less,
  atMost,
  more,
  atLeast,
  same,
};
