/**
 * One line of a log: JSON whose last key is its checksum. The sum runs over everything recorded so far, each line
 * without its own sum, so it fits only if this line and all before it are as they were written. This frame is the same
 * in every version, so that a damaged line is never taken for the work of a newer program.
 */
import { fail, type JsonGroup, jsonIn, type Result, succeed } from '../shared/result.ts';
import type { LineFault } from './fault.ts';

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

const frameLength = ',"sum":"00000000"}'.length;
const frame = /,"sum":"([0-9a-f]{8})"\}$/;
const encoder = new TextEncoder();
const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

interface SealedLine {
  /** With its line end. */
  readonly text: string;
  readonly sum: number;
}

/** The line for a JSON object, given the sum of the lines before it (0 for the first). */
export function sealLine(json: JsonGroup, before: number): SealedLine {
  const body = JSON.stringify(json).slice(0, -1);
  const sum = crc32(encoder.encode(body), before);
  return { text: `${body},"sum":"${formatSum(sum)}"}\n`, sum };
}

/** Reads a line without its line end: the object in it and the sum to go on with, or what is wrong. */
export function unsealLine(
  line: Uint8Array,
  before: number,
): Result<{ readonly json: unknown; readonly sum: number }, LineFault> {
  const text = decode(line);
  if (text === null) return fail('not-text');
  const found = frame.exec(text.slice(-frameLength));
  if (!found) return fail(jsonIn(text) === undefined ? 'not-json' : 'no-checksum');
  const sum = crc32(line.subarray(0, line.length - frameLength), before);
  if (sum !== Number.parseInt(found[1] as string, 16)) return fail('checksum');
  const json = jsonIn(`${text.slice(0, -frameLength)}}`);
  return json === undefined ? fail('not-json') : succeed({ json, sum });
}

/** The sum that a line says it has, unchecked; null where it has none. */
export function statedSum(line: Uint8Array): number | null {
  const found = frame.exec(decode(line.subarray(-frameLength)) ?? '');
  return found ? Number.parseInt(found[1] as string, 16) : null;
}

function decode(bytes: Uint8Array): string | null {
  try {
    return decoder.decode(bytes);
  } catch {
    return null;
  }
}

/** What ends a line of a log; on Windows a carriage return stands before it. */
export const lineEnd = 10;
export const carriageReturn = 13;

/** The line between two places, without its end. */
export const lineIn = (bytes: Uint8Array, from: number, end: number): Uint8Array =>
  bytes.subarray(from, end > from && bytes[end - 1] === carriageReturn ? end - 1 : end);
