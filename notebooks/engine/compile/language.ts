/** What formulas have of the language besides the names handed to them. None reads a clock. */
export const languageNames: ReadonlySet<string> = new Set(
  (
    "Array ArrayBuffer BigInt Boolean DataView Error Float32Array Float64Array Infinity Int16Array " +
    "Int32Array Int8Array Intl JSON Map Math NaN Number Object Promise RangeError RegExp Set String " +
    "Symbol TypeError Uint16Array Uint32Array Uint8Array WeakMap WeakSet decodeURIComponent " +
    "encodeURIComponent isFinite isNaN parseFloat parseInt structuredClone undefined"
  ).split(" "),
);

const clock =
  "a formula may not read the clock, so that it gives the same answer again: use `today`";
const chance = "a formula may not draw chance numbers, so that it gives the same answer again";
const network = "a formula reaches nothing outside the notebook";
const page = "a formula sees nothing of the page: it gives a value, and the page draws it";

/** Names people may expect, and why they are not there. */
const refused: Readonly<Record<string, string>> = {
  Date: clock,
  performance: clock,
  crypto: chance,
  fetch: network,
  XMLHttpRequest: network,
  WebSocket: network,
  localStorage: network,
  indexedDB: network,
  importScripts: network,
  postMessage: network,
  require: network,
  process: network,
  Worker: network,
  document: page,
  window: page,
  self: page,
  globalThis: page,
  alert: page,
  console: page,
  eval: "a formula is not made from text",
  Function: "a formula is not made from text",
  arguments: "write the function's arguments by name",
  setTimeout: "a formula can't wait for a time",
  setInterval: "a formula can't wait for a time",
};

export function whyRefused(name: string): string | undefined {
  return Object.hasOwn(refused, name) ? refused[name] : undefined;
}

export const chanceRefused = `\`Math.random\` is not there: ${chance}.`;
export const importRefused = `\`import\` is not there: ${network}.`;
