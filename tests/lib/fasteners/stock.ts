import { inch, type Screw, times } from "../../../lib/index.ts";

/** A screw by length and diameter in inches. */
export const screw = (lengthIn: number, diameterIn = 0.19): Screw => ({
  length: times(inch, lengthIn),
  diameter: times(inch, diameterIn),
});

export const inches = (n: number) => times(inch, n);
