/**
 * CRC-32 with the polynomial of ISO/IEC 3309 and ITU-T V.42, as in gzip. It finds accidents: a flipped bit, a lost
 * line, a hand slipping in an editor. It is no seal against intent, since anyone can compute it, and needs to be
 * none: a log is the maker's own.
 */
const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ 0xedb88320 : rest >>> 1;
  return rest;
});

/** The CRC-32 of `bytes`; given the sum of what stood before them, the sum of both. */
export function crc32(bytes: Uint8Array, before = 0): number {
  let rest = ~before;
  for (let i = 0; i < bytes.length; i++) {
    rest = (table[(rest ^ (bytes[i] as number)) & 0xff] as number) ^ (rest >>> 8);
  }
  return ~rest >>> 0;
}

/** Eight hexadecimal digits. */
export const formatSum = (sum: number): string => sum.toString(16).padStart(8, '0');
