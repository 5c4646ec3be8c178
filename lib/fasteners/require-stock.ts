import { type Problem, ProblemError, requireRecords } from "../check/index.ts";
import { foot, inch, over, requireQuantity } from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";
import type { Screw } from "./screw.ts";

/** Throws unless there is at least one screw and every one has a length and a diameter. */
export function requireStock(stock: readonly Screw[]): void {
  if (!Array.isArray(stock) || stock.length === 0) {
    const isNothing = stock === undefined || stock === null || Array.isArray(stock);
    const problem: Problem = {
      code: isNothing ? "missing" : "unreadable",
      path: ["stock"],
      allowed: "at least one screw with a length and a diameter",
      received: receivedText(stock ?? undefined),
      remedy: "Give the screws one can buy, as rows of the table of screws.",
    };
    throw new ProblemError([problem]);
  }
  requireRecords(stock, ["stock"]);
  stock.forEach((screw, at) => {
    requireQuantity(screw.length, "length", ["stock", at + 1, "length"], {
      min: over(inch, 4),
      max: foot,
    });
    requireQuantity(screw.diameter, "length", ["stock", at + 1, "diameter"], {
      min: over(inch, 32),
      max: inch,
    });
  });
}
