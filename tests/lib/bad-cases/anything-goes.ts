/** Functions that take any value whatever by design, each with the reason. */
export const anythingGoes: Readonly<Record<string, string>> = {
  Checks: "a class that gathers problems; each of its checks is a guard that has cases here",
  ProblemError: "a class made from problems that are there already",
  isCalendarDate: "asks of any value whether it is a date",
  isCurrencyCode: "asks of any value whether it is a code",
  isProblem: "asks of any value whether it is a problem",
  isQuantity: "asks of any value whether it is a quantity",
  isRange: "asks of any value whether it is a range",
  minorDigits: "2 decimals for whatever is no currency with other decimals",
  problemsOf: "looks for problems in whatever was thrown",
  reviveQuantities: "copies any value, quantities made whole",
  same: "compares any two values; what differs in kind is not the same",
};
