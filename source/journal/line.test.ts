import { crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crc32, formatSum } from './line.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe('the checksum of a log line', () => {
  it('is CRC-32: the check value of "123456789" is cbf43926', () => {
    // Catalogue of parametrised CRC algorithms, CRC-32/ISO-HDLC: check=0xcbf43926. A value from memory: empty gives 0.
    expect(formatSum(crc32(bytes('123456789')))).toBe('cbf43926');
    expect(formatSum(crc32(bytes('')))).toBe('00000000');
  });

  it('is what zlib computes, also when it goes on from an earlier sum', () => {
    fc.assert(
      fc.property(fc.uint8Array(), fc.uint8Array(), (first, second) => {
        expect(crc32(first)).toBe(zlibCrc32(first));
        expect(crc32(second, crc32(first))).toBe(zlibCrc32(Buffer.concat([first, second])));
      }),
    );
  });
});
