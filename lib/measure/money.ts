import { ProblemError } from "../check/index.ts";
import { currencyCodes, isCurrencyCode, minorDigits } from "./currency.ts";
import { roundHalfAway } from "./decimal.ts";
import { moneyDimension } from "./dimensions.ts";
import { requireMoney, requireNumber } from "./guards.ts";
import { type Money, quantity } from "./quantity.ts";
import { receivedText } from "./received.ts";
import { sumOf } from "./sums.ts";

/**
 * Money: an amount in the major unit (dollars, euros) and an ISO 4217 code; without a code it
 * takes the currency of what it is added to.
 *
 * @throws ProblemError for an amount that is not a finite number (`unreadable`), a code not of the
 * standard (`unknown`)
 * @rule amount with its currency
 * @source iso-4217
 * @example
 * money(1516.44, "USD") // => $1,516.44
 */
export function money(amount: number, currency?: string): Money {
  requireNumber(amount, ["amount"]);
  if (currency !== undefined && !isCurrencyCode(currency)) {
    throw new ProblemError([
      {
        code: "unknown",
        path: ["currency"],
        allowed: `a code of ISO 4217 (${currencyCodes.length} are known)`,
        received: receivedText(currency),
        remedy: "Write three capitals, as USD, EUR or CAD.",
      },
    ]);
  }
  return quantity(amount + 0, moneyDimension, currency);
}

/**
 * Money rounded to the minor unit of its currency (cents; whole yen), a half away from zero.
 *
 * @throws ProblemError for what is no money (`missing`, `wrong-unit`, `unreadable`)
 * @rule half a minor unit rounds away from zero, judged on the decimal amount
 * @source iso-4217, ssuta
 * @example
 * roundMoney(money(6.875, "USD")) // => $6.88
 */
export function roundMoney(m: Money): Money {
  requireMoney(m, ["money"]);
  return quantity(roundHalfAway(m.si, minorDigits(m.currency)), moneyDimension, m.currency);
}

/**
 * Money added up in one currency; amounts without a currency take the others'.
 *
 * @throws ProblemError where two currencies meet (`mixed-currency`), one is no money, or none is
 * given (`missing`)
 * @rule amounts of one currency add
 * @source common practice
 * @example
 * addMoney(money(23.5, "USD"), money(12)) // => $35.50
 */
export function addMoney(...amounts: readonly Money[]): Money {
  amounts.forEach((amount, at) => {
    requireMoney(amount, ["amounts", at + 1]);
  });
  return sumOf(amounts);
}
