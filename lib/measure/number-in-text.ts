/** What a written number is: its value, or what makes it unreadable. */
export type NumberFound = { readonly value: number } | { readonly trouble: string };

const fractionSigns: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅕": "1/5",
  "⅙": "1/6",
};

/** One writing for what people and pages write in several: fractions, minus, spaces, marks. */
export function plainText(text: string): string {
  return text
    .replace(/[¼½¾⅛⅜⅝⅞⅓⅔⅕⅙]/g, (sign) => ` ${fractionSigns[sign] ?? ""}`)
    .replace(/[⁄∕]/g, "/")
    .replace(/[−‐‑]/g, "-")
    .replace(/[′’‘]/g, "'")
    .replace(/''|[″”“]/g, '"')
    .replace(/\s+/g, " ")
    .trim();
}

const fractionPattern = /^(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)$/;

function fractionValue(text: string): NumberFound | undefined {
  const found = fractionPattern.exec(text);
  if (found === null) return undefined;
  const [, whole = "0", above, below] = found;
  if (Number(below) === 0) return { trouble: "it divides by zero" };
  return { value: Number(whole) + Number(above) / Number(below) };
}

interface Marks {
  readonly plain: RegExp;
  /** Thousands apart, by the separator that parts them. */
  readonly grouped: readonly (readonly [separator: string, RegExp])[];
}

function marks(mark: string, separators: string): Marks {
  const plain = new RegExp(`^(?:\\d+(?:${mark}\\d*)?|${mark}\\d+)(?:e[+-]?\\d{1,3})?$`, "i");
  const grouped = [...separators].map((separator) => {
    const escaped = separator === "." ? "\\." : separator;
    return [separator, new RegExp(`^\\d{1,3}(?:${escaped}\\d{3})+(?:${mark}\\d*)?$`)] as const;
  });
  return { plain, grouped };
}

const byDecimal = { ".": marks("\\.", ", "), ",": marks(",", ". ") } as const;

function groupedValue(text: string, decimal: "." | ","): NumberFound {
  const { plain, grouped } = byDecimal[decimal];
  if (plain.test(text)) return { value: Number(text.replace(decimal, ".")) };
  for (const [separator, pattern] of grouped) {
    // "1.250" under a decimal comma may be a slip for 1,250: only "1.250,5" or "1.250.000" is sure.
    const isCertain = separator !== "." || text.split(".").length > 2 || text.includes(",");
    if (isCertain && pattern.test(text)) {
      return { value: Number(text.replaceAll(separator, "").replace(decimal, ".")) };
    }
  }
  if (/^[\d.,]+$/.test(text)) {
    return {
      trouble: `points and commas can be read in two ways; decimals are marked with “${decimal}”`,
    };
  }
  return { trouble: "it is not a number" };
}

/** A number without sign or unit: "12", "1,250", "3 1/2", "3-1/2", "12,5" with a decimal comma. */
export function unsignedNumber(text: string, decimal: "." | ","): NumberFound {
  const found = fractionValue(text) ?? groupedValue(text, decimal);
  if ("value" in found && !Number.isFinite(found.value)) return { trouble: "it is too large" };
  return found;
}
