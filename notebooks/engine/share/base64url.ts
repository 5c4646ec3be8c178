const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/** Bytes in the letters that may stand in an address as they are (RFC 4648, section 5), without padding. */
export function toLetters(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 3) {
    const [first = 0, second = 0, third = 0] = bytes.subarray(at, at + 3);
    const group = (first << 16) | (second << 8) | third;
    const count = Math.min(3, bytes.length - at) + 1;
    for (let place = 0; place < count; place += 1)
      text += letters[(group >> (18 - 6 * place)) & 63] ?? "";
  }
  return text;
}

/** The bytes; undefined for a text that `toLetters` never gives. */
export function fromLetters(text: string): Uint8Array | undefined {
  const rest = text.length % 4;
  if (rest === 1) return undefined;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let at = 0;
  for (let start = 0; start < text.length; start += 4) {
    let group = 0;
    for (let place = 0; place < 4; place += 1) {
      const letter = text[start + place];
      const value = letter === undefined ? 0 : letters.indexOf(letter);
      if (value < 0) return undefined;
      group = (group << 6) | value;
    }
    for (const shift of [16, 8, 0]) {
      const byte = (group >> shift) & 255;
      // Bits that belong to no byte must be empty: two texts must not stand for the same bytes.
      if (at < bytes.length) bytes[at] = byte;
      else if (byte !== 0) return undefined;
      at += 1;
    }
  }
  return bytes;
}
