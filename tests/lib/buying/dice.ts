/** Chance with a seed: the same seed throws the same numbers on every machine. */
export interface Dice {
  /** A whole number from one to the other, both included. */
  whole(from: number, to: number): number;
  /** True in so many of 1. */
  chance(share: number): boolean;
  pick<T>(list: readonly [T, ...T[]]): T;
}

/** Dice by a counter whose bits are mixed, 32 at a time. */
export function dice(seed: number): Dice {
  let state = Math.imul(seed + 1, 0x9e3779b1);
  const share = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (from: number, to: number) => from + Math.floor(share() * (to - from + 1));
  return {
    whole,
    chance: (of) => share() < of,
    pick: (list) => list[whole(0, list.length - 1)] ?? list[0],
  };
}
