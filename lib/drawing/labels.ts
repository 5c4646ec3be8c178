import { type Length, printQuantity, type UnitSystem } from "../measure/index.ts";

/** A length to cut or to measure, as it is read off a tape: feet-inches, or whole millimetres. */
export function tapeLength(length: Length, units: UnitSystem): string {
  if (units === "metric") return `${grouped(Math.round(length.si * 1000))} mm`;
  return printQuantity(length, { system: "us", style: "typographic" });
}

/** A length as boards are sold: 8′, or 2.4 m. */
export function soldLength(length: Length, units: UnitSystem): string {
  if (units === "us") return tapeLength(length, "us");
  return `${Number((Math.round(length.si * 1000) / 1000).toFixed(3))} m`;
}

/** A length in both systems, the reader's own first: "4′ · 1.22 m". */
export function bothLengths(length: Length, units: UnitSystem): string {
  const metric =
    length.si < 1 ? `${Math.round(length.si * 1000)} mm` : `${Number(length.si.toFixed(2))} m`;
  const us = printQuantity(length, { system: "us", style: "typographic" });
  return units === "us" ? `${us} · ${metric}` : `${metric} · ${us}`;
}

function grouped(whole: number): string {
  return whole >= 10_000
    ? `${Math.floor(whole / 1000)} ${String(whole % 1000).padStart(3, "0")}`
    : String(whole);
}

const narrow = new Set("ijlt.,:;'′″·|()1 ⁄-f r".split(""));
const wide = new Set("mwMW@—".split(""));

/** About how wide a text is in the drawings' face, in pixels: enough to see whether it fits. */
export function textWidth(text: string, sizePx: number): number {
  let ems = 0;
  for (const letter of text) {
    if (narrow.has(letter)) ems += 0.32;
    else if (wide.has(letter)) ems += 0.84;
    else if (letter >= "A" && letter <= "Z") ems += 0.64;
    else ems += 0.55;
  }
  return ems * sizePx;
}

/** A text cut short where it has no room, its end marked so. */
export function shortened(text: string, room: number, sizePx: number): string {
  if (textWidth(text, sizePx) <= room) return text;
  let kept = text;
  while (kept.length > 1 && textWidth(`${kept}…`, sizePx) > room) kept = kept.slice(0, -1);
  return `${kept}…`;
}

/** Names in a list that may be long: "A-1, A-2, A-3 and 9 more". */
export function namesInShort(names: readonly string[], most: number): string {
  if (names.length <= most) return names.join(", ");
  return `${names.slice(0, most).join(", ")} and ${names.length - most} more`;
}
