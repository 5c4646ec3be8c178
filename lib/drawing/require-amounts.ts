import { type Path, type Problem, requireRecord } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import { isQuantity, printQuantity, type Quantity } from "../measure/index.ts";
import { dimensionInWords } from "../measure/kinds.ts";
import { receivedText } from "../measure/received.ts";

/** More than this, in the coherent unit of the amount, is a slip. */
const most = 1e12;

/** Throws unless these are named amounts of one kind and one currency, none negative. */
export function requireAmounts(amounts: unknown): void {
  const given = new Given();
  const first = given
    .list(amounts, ["amounts"])
    .map((entry) => (entry as { readonly amount?: unknown } | null)?.amount)
    .find(isQuantity);
  given.list(amounts, ["amounts"]).forEach((entry, at) => {
    const path = ["amounts", at + 1];
    given.attempt(() => {
      requireRecord(entry, path);
      const { name, amount } = entry as Readonly<Record<string, unknown>>;
      given.text(name, [...path, "name"]);
      for (const problem of problemsOfAmount(amount, first, [...path, "amount"]))
        given.add(problem);
    });
  });
  given.done();
}

function problemsOfAmount(amount: unknown, first: Quantity | undefined, path: Path): Problem[] {
  const received = receivedText(amount ?? undefined);
  const refused = (code: Problem["code"], allowed: string, remedy: string): Problem[] => [
    { code, path, allowed, received, remedy },
  ];
  if (amount === undefined || amount === null)
    return refused("missing", "a quantity, 0 or more", "Give an amount with its unit or currency.");
  if (!isQuantity(amount))
    return refused(
      typeof amount === "number" && Number.isFinite(amount) ? "wrong-unit" : "unreadable",
      "a quantity, 0 or more",
      "Give an amount with its unit or currency.",
    );
  if (!Number.isFinite(amount.si))
    return refused("unreadable", "a finite quantity", "Look for a division by nothing.");
  if (first && amount.dim.join() !== first.dim.join())
    return refused(
      "wrong-unit",
      `${dimensionInWords(first.dim)}, as the first amount is`,
      "Draw amounts of one kind together.",
    );
  if (
    first?.currency !== undefined &&
    amount.currency !== undefined &&
    amount.currency !== first.currency
  )
    return refused("mixed-currency", `money in ${first.currency}`, "Draw one currency at a time.");
  if (amount.si > most)
    return refused(
      "too-large",
      `at most ${printQuantity({ ...first, ...amount, si: most })}`,
      "Look for a slip.",
    );
  if (amount.si < 0)
    return refused("too-small", "0 or more", "No bar is shorter than nothing: leave it out.");
  return [];
}
