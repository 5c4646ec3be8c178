const polynomial = 0xedb88320;

const table = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ polynomial : value >>> 1;
  return value;
});

/** The CRC-32 of bytes, as gzip has it (RFC 1952, section 8). */
export function checksum(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (const byte of bytes) sum = (sum >>> 8) ^ (table[(sum ^ byte) & 255] ?? 0);
  return (sum ^ 0xffffffff) >>> 0;
}
