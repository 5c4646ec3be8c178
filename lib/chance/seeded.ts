/**
 * Numbers between 0 and 1 that look random and are the same for the same seed everywhere: the
 * generator mulberry32, 32 bits of state, in whole-number arithmetic.
 */
export function seededUniform(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
