import { decimalsFor, roundHalfAway, tidy } from "./decimal.ts";

const inchM = 0.0254;
const sixteenthM = inchM / 16;
const feetAreDecimalFromM = 100 * 0.3048;
const fineBelowM = 3 * inchM;

function fraction(sixteenths: number, typographic: boolean): string {
  let above = sixteenths;
  let below = 16;
  while (above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  return `${above}${typographic ? "⁄" : "/"}${below}`;
}

function joined(parts: readonly (string | false)[]): string {
  return parts.filter((part) => part !== false).join(" ");
}

/** How far a number of inches is from the nearest sixteenth. */
function offSixteenths(inches: number): number {
  return Math.abs(inches - roundHalfAway(inches * 16, 0) / 16);
}

/**
 * Whether a length is printed in feet, inches and sixteenths: not from 100 ft on, and not where a
 * sixteenth would be too coarse, as for the 0.138 in of a screw.
 */
export function inSixteenths(lengthM: number): boolean {
  const sizeM = Math.abs(lengthM);
  if (sizeM >= feetAreDecimalFromM) return false;
  if (sizeM >= fineBelowM) return true;
  const sizeIn = sizeM / inchM;
  // Judged by the figure as it would stand in decimals, so that what is read back from the page is
  // printed the same again: 1.245 in is 1.25 in there, and that is 1 1/4 in.
  const shownIn = roundHalfAway(tidy(sizeIn), decimalsFor(sizeIn, 3));
  return offSixteenths(sizeIn) <= 1e-9 || offSixteenths(shownIn) <= 0.002 + 1e-9;
}

/** Feet, inches and sixteenths: "8 ft 3 1/2 in", or "8′ 3 1⁄2″" for the page. */
export function feetInchesText(lengthM: number, typographic: boolean): string {
  const all = roundHalfAway(Math.abs(lengthM) / sixteenthM, 0);
  const sign = all > 0 && lengthM < 0 ? (typographic ? "−" : "-") : "";
  const feet = Math.floor(all / 192);
  const inches = Math.floor((all % 192) / 16);
  const sixteenths = all % 16;
  const parts = joined([
    (inches > 0 || (sixteenths === 0 && feet === 0)) && String(inches),
    sixteenths > 0 && fraction(sixteenths, typographic),
  ]);
  const [footMark, inchMark] = typographic ? ["′", "″"] : [" ft", " in"];
  return sign + joined([feet > 0 && `${feet}${footMark}`, parts !== "" && `${parts}${inchMark}`]);
}
