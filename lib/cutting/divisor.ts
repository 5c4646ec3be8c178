export function greatestDivisor(a: number, b: number): number {
  let [high, low] = [a, b];
  while (low !== 0) [high, low] = [low, high % low];
  return high;
}
