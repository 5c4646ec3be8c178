import { createRequire } from "node:module";
import { inflateSync } from "node:zlib";

type Scan = (data: Uint8ClampedArray, width: number, height: number) => { data: string } | null;

const module = createRequire(import.meta.url)("jsqr") as Scan | { readonly default: Scan };
const scan = typeof module === "function" ? module : module.default;

/** What a reader of codes finds in a screenshot. */
export function codeIn(png: Buffer): string | undefined {
  const { data, width, height } = pixelsOf(png);
  return scan(data, width, height)?.data;
}

/** The pixels of a PNG of 8 bits a channel, not interlaced (ISO/IEC 15948), which is what a screenshot is. */
function pixelsOf(png: Buffer) {
  const [width, height, channels] = [
    png.readUInt32BE(16),
    png.readUInt32BE(20),
    png[25] === 6 ? 4 : 3,
  ];
  const parts: Buffer[] = [];
  for (let at = 8; at < png.length; at += 12 + png.readUInt32BE(at))
    if (png.toString("latin1", at + 4, at + 8) === "IDAT")
      parts.push(png.subarray(at + 8, at + 8 + png.readUInt32BE(at)));
  const raw = inflateSync(Buffer.concat(parts));
  const line = width * channels;
  const rows = new Uint8Array(line * height);
  for (let y = 0; y < height; y += 1) {
    const filter = raw[y * (line + 1)] ?? 0;
    for (let x = 0; x < line; x += 1) {
      const left = x < channels ? 0 : (rows[y * line + x - channels] ?? 0);
      const up = y === 0 ? 0 : (rows[(y - 1) * line + x] ?? 0);
      const corner = y === 0 || x < channels ? 0 : (rows[(y - 1) * line + x - channels] ?? 0);
      const by = [0, left, up, (left + up) >> 1, nearest(left, up, corner)][filter] ?? 0;
      rows[y * line + x] = (raw[y * (line + 1) + 1 + x] ?? 0) + by;
    }
  }
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let at = 0; at < width * height; at += 1)
    for (let channel = 0; channel < 3; channel += 1)
      data[at * 4 + channel] = rows[at * channels + channel] ?? 0;
  return { data, width, height };
}

function nearest(left: number, up: number, corner: number): number {
  const guess = left + up - corner;
  const [a, b, c] = [left, up, corner].map((one) => Math.abs(guess - one));
  if (a === undefined || b === undefined || c === undefined) return corner;
  return a <= b && a <= c ? left : b <= c ? up : corner;
}
