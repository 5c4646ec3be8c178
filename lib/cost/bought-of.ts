import { type Mass, quantity } from "../measure/index.ts";
import type { Need } from "./need.ts";
import type { PriceLine } from "./price-line.ts";
import type { PurchasePart } from "./purchase.ts";
import type { Bought, SizeShown } from "./receipt.ts";

/** A part of a purchase as it stands on a receipt. */
export function boughtOf(part: PurchasePart, need: Need): Bought {
  const { line, count } = part;
  const mass = massOf(part, need);
  return {
    item: need.item,
    use: need.use,
    size: sizeShown(line),
    form: line.form,
    count,
    price: line.price,
    ...(mass === undefined ? {} : { mass }),
    shares: need.shares,
  };
}

/** How much one size of a price line is. */
export function sizeShown(line: PriceLine): SizeShown {
  if (line.kind === "board") return line.length;
  if (line.kind === "goods") {
    const { size } = line;
    if (size.kind === "volume") return size.volume;
    if (size.kind === "mass") return size.mass;
    return size.kind === "length" ? size.length : size.count;
  }
  return line.sides;
}

function massOf({ line, count }: PurchasePart, need: Need): Mass | undefined {
  if (line.kind !== "goods" || need.kind !== "volume") return undefined;
  const kilograms = (kg: number): Mass => quantity(kg * count, [0, 1, 0, 0, 0]);
  if (line.size.kind === "mass") return kilograms(line.size.mass.si);
  if (line.size.kind !== "volume" || need.density === undefined) return undefined;
  return kilograms(line.size.volume.si * need.density.likely.si);
}
