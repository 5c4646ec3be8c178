import type { Kind } from "./kinds.ts";

const ton = "A ton may be 2,000 lb, 2,240 lb or 1,000 kg: write short ton, lb or t.";
const quart = "A quart or pint may be dry or liquid: write gal, cu ft or L.";
const month = "Months differ in length: write days, weeks or years.";

const byName: Readonly<Record<string, string>> = {
  ton,
  tons: ton,
  quart,
  quarts: quart,
  qt: quart,
  pint: quart,
  pints: quart,
  pt: quart,
  month,
  months: month,
  mo: month,
};

/** What to write instead of a unit that means several things; undefined for a plain one. */
export function unitHint(symbol: string, kind: Kind): string | undefined {
  const name = symbol.trim().toLowerCase();
  if (kind === "volume" && /^(yd|yards?|yd\.)$/.test(name)) {
    return "A yard is a length: for the yard of soil write cu yd.";
  }
  if (kind === "volume" && /^(oz|ounces?)\.?$/.test(name)) {
    return "An ounce is a mass: for a liquid write fl oz.";
  }
  return byName[name];
}
