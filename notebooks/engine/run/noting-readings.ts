import { limits } from "./show/limits.ts";
import { isReading } from "./show/reading.ts";

/**
 * A library function that also puts down every reading of a table it gives: a formula may go on with
 * the good rows alone, as `readBeds(beds).rows`, and what is wrong with the others must not be lost.
 * Anything but a function is given back as it is.
 */
export function notingReadings(value: unknown, readings: object[]): unknown {
  if (typeof value !== "function") return value;
  return new Proxy(value, {
    apply(target, self, given) {
      const result: unknown = Reflect.apply(target, self, given);
      if (readings.length < limits.items && isReading(result)) readings.push(result);
      return result;
    },
  });
}
