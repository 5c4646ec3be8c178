import { inch, over, readLength } from "../measure/index.ts";

/**
 * One way of writing the name of a thing, on which needs and price lists are matched: small letters,
 * single blanks, one of it ("corner plates" is "corner plate"); a screw is known by its length,
 * however that is written ("3 in screws", `3" deck screws`, "#10 x 3 in screws").
 */
export function itemKey(item: string): string {
  const plain = item
    .trim()
    .toLowerCase()
    .replace(/\s+/g, " ")
    .replace(/([^s])s$/, "$1");
  if (!plain.endsWith("screw")) return plain;
  const length = [...plain.matchAll(/\d[\d /.,-]*(?:in\b|inch\b|["″”]|mm\b|cm\b)/g)].at(-1)?.[0];
  if (length === undefined) return plain;
  const reading = readLength(length, { path: [] });
  return reading.ok ? `screw ${Math.round(over(reading.value, inch) * 1000)}` : plain;
}
