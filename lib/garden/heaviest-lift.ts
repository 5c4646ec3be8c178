import type { Caution } from "../check/index.ts";
import type { ReceiptLine, YardReceipt } from "../cost/index.ts";
import { massDimension, quantity } from "../measure/index.ts";
import { cautionsForLift } from "../safety/index.ts";

/** The caution for the heaviest thing that is lifted in one piece: a bag, a board; none if light. */
export function heaviestLift(receipts: readonly YardReceipt[]): readonly Caution[] {
  let heaviest: { readonly line: ReceiptLine; readonly kg: number } | undefined;
  for (const line of receipts.flatMap(({ lines }) => lines)) {
    if (line.mass === undefined || line.count === 0 || line.form === "bulk") continue;
    const kg = line.mass.si / line.count;
    if (heaviest === undefined || kg > heaviest.kg) heaviest = { line, kg };
  }
  if (heaviest === undefined) return [];
  const { line, kg } = heaviest;
  const what = line.form === "bag" ? `a bag of ${line.item}` : line.item;
  return cautionsForLift(quantity(kg, massDimension), { because: what });
}
