import type { EntryKind, ShownEntry } from "../types/index.ts";

/**
 * How an entry can be varied: texts to try for its low and its high, the first that is not refused
 * counts; every other option; or why it can't be.
 */
export type Variation =
  | { readonly by: "range"; readonly low: readonly string[]; readonly high: readonly string[] }
  | {
      readonly by: "options";
      readonly options: readonly { readonly text: string; readonly label: string }[];
    }
  | { readonly by: "none"; readonly why: string };

const sized: ReadonlySet<EntryKind> = new Set([
  "length",
  "area",
  "volume",
  "mass",
  "money",
  "number",
  "percent",
]);

/**
 * The texts an entry is varied between: so much under and over its own, in its own unit. They are
 * texts as a person would type them; whether one is refused is for the entry's reader to say.
 *
 * @param share how far, as a share of the value; 0.2 is 20 %
 */
export function variationOf(entry: ShownEntry, share: number): Variation {
  if (entry.problem !== undefined) return none("what is in it now is refused");
  if (entry.entry === "yes-no") return others(entry, yesNo);
  if (entry.entry === "choice") return others(entry, entry.options ?? []);
  if (!sized.has(entry.entry))
    return none(entry.entry === "date" ? "it is a date" : "it is words, not a figure");
  return rangeOf(entry, share);
}

const yesNo = ["yes", "no"].map((text) => ({ text, label: text }));

function none(why: string): Variation {
  return { by: "none", why };
}

function others({ text }: ShownEntry, all: readonly { text: string; label: string }[]): Variation {
  const options = all.filter((option) => plain(option.text) !== plain(text));
  return options.length === 0
    ? none("there is nothing else to choose")
    : { by: "options", options };
}

const plain = (text: string) => text.trim().toLowerCase();

function rangeOf(entry: ShownEntry, share: number): Variation {
  const text = entry.text.trim();
  if (text === "" || /^none$/i.test(text)) return none("there is no figure in it");
  const found = amountIn(text, entry.entry === "money");
  if (found === undefined)
    return none("its text is more than one figure with one unit; write a low and a high yourself");
  if (found.value === 0) return none("it is 0; write a low and a high yourself");
  const reach = Math.abs(found.value) * share;
  const [least, most] = limitsOf(entry.limits);
  const texts = (value: number, limit: string | undefined) =>
    [write(found, value), whole(found, value), limit].filter(
      (one, index, all): one is string =>
        one !== undefined && one !== text && all.indexOf(one) === index,
    );
  return {
    by: "range",
    low: texts(found.value - reach, least),
    high: texts(found.value + reach, most),
  };
}

interface Amount {
  readonly value: number;
  readonly before: string;
  readonly after: string;
  readonly decimals: number;
  /** Money is written with all its places: 4.80. */
  readonly money: boolean;
}

const figure =
  "(?:\\d+[ -]\\d+/\\d+|\\d+/\\d+|\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?|\\d+(?:\\.\\d*)?|\\.\\d+)";
const single = new RegExp(
  `^([-−]?[$€£]?\\s*)(${figure})(\\s*(?:[^\\d.,/+*-]*\\p{L}[23²³]|[^\\d.,/+*-]*))$`,
  "u",
);
const feetAndInches = new RegExp(
  `^(\\d+(?:\\.\\d+)?)\\s*(?:ft|feet|foot|['′])\\s*(${figure})\\s*(?:in|inch|inches|["″])$`,
  "iu",
);

/** The one figure that a text begins with, and what stands around it. */
function amountIn(text: string, money: boolean): Amount | undefined {
  const [, feet, inches] = feetAndInches.exec(text) ?? [];
  // The two are one length, in the smaller of its units.
  if (feet !== undefined && inches !== undefined)
    return {
      value: 12 * Number(feet) + numberOf(inches),
      before: "",
      after: " in",
      decimals: 2,
      money: false,
    };
  const [, before, digits, after] = single.exec(text) ?? [];
  if (before === undefined || digits === undefined || after === undefined) return undefined;
  const value = numberOf(digits);
  if (!Number.isFinite(value)) return undefined;
  const decimals = money || /^\d+\.\d\d$/.test(digits) ? 2 : placesFor(value);
  const minus = /^[-−]/.test(before);
  return {
    value: minus ? -value : value,
    before: before.replace(/^[-−]/, ""),
    after,
    decimals,
    money,
  };
}

function numberOf(digits: string): number {
  const [, whole = "0", above, below] = /^(?:(\d+)[ -])?(\d+)\/(\d+)$/.exec(digits) ?? [];
  if (above !== undefined && below !== undefined)
    return Number(whole) + Number(above) / Number(below);
  return Number(digits.replaceAll(",", ""));
}

/** Enough places for four digits that count. */
function placesFor(value: number): number {
  return value === 0 ? 0 : Math.max(0, Math.min(6, 3 - Math.floor(Math.log10(Math.abs(value)))));
}

function write({ before, after, decimals, money }: Amount, value: number): string {
  const digits = Math.abs(value).toFixed(decimals);
  const sign = value < 0 && Number(digits) !== 0 ? "-" : "";
  return `${sign}${before}${money && decimals === 2 ? digits : Number(digits)}${after}`;
}

/** A count that takes whole numbers only: the nearest, but at least one away. */
function whole(amount: Amount, value: number): string | undefined {
  if (!Number.isInteger(amount.value)) return undefined;
  const near = Math.round(value);
  const away = Math.sign(value - amount.value);
  return write({ ...amount, decimals: 0 }, near === amount.value ? near + away : near);
}

/** The limits as texts that the entry itself reads: "1/16 in to 6 in", "at least 0", "at most 20". */
function limitsOf(words: string | undefined): readonly [string | undefined, string | undefined] {
  const bare = (words ?? "").replace(/,? ?or none$/, "");
  const [, least] = /^at least (.+)$/.exec(bare) ?? [];
  const [, most] = /^at most (.+)$/.exec(bare) ?? [];
  const [, low, high] = /^(.+) to (.+)$/.exec(bare) ?? [];
  return [low ?? least, high ?? most];
}
