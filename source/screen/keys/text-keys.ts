import { stripVTControlCharacters } from 'node:util';
import { characterKey, type Key, makeKey } from './key.ts';

/** More characters than this in one read were not typed by hand. */
const longestTyping = 8;
/** A held key repeats some thirty times a second and is not late by more than about three seconds (rule of thumb). */
const longestHold = 100;

const controlNames: ReadonlyMap<string, string> = new Map([
  ['\r', 'enter'],
  ['\n', 'enter'],
  ['\t', 'tab'],
  ['\b', 'backspace'],
  ['\x7f', 'backspace'],
  ['\x1b', 'escape'],
]);

/** The key of one character as it is typed, or undefined for what no key sends. */
export function typedKey(character: string): Key | undefined {
  const name = controlNames.get(character);
  if (name !== undefined) return makeKey(name);
  if (character === '\0') return makeKey('space', { ctrl: true });
  // Ctrl takes 64 off the capital: Ctrl-A is 1, Ctrl-\ is 28.
  const code = character.codePointAt(0) ?? 0;
  if (code < 32) return makeKey(String.fromCharCode(code + 64).toLowerCase(), { ctrl: true });
  return /[\p{Cc}\p{Cs}\ufffd]/u.test(character) ? undefined : characterKey(character);
}

/** The same key with Alt held; it types nothing. */
export const withAlt = (key: Key | undefined): Key | undefined => key && { ...key, alt: true, text: '' };

/** A pasted text: line ends as `\n`, no control characters but these and tabs. */
export function pasteKey(pasted: string): Key {
  const lines = stripVTControlCharacters(pasted).replace(/\r\n?/g, '\n');
  return makeKey('paste', { text: lines.replace(/(?![\n\t])\p{Cc}|\p{Cs}/gu, '') });
}

const single = (run: string): readonly Key[] => [...run].map(typedKey).filter((key) => key !== undefined);

// A held key that arrives late in one piece is one character over and over; a paste is not.
function isPaste(run: string): boolean {
  const printable = [...run].filter((character) => !/[\r\n\t]/.test(character));
  const isOneKey = new Set(printable).size === 1 && printable.length <= longestHold;
  return printable.length > longestTyping && !isOneKey;
}

// A switch that bounces sends one letter over and over, and a line that is typed past it begins with a slash.
const pressesFirst = /^(?:(\S)\1+|\S(?=\/))/u;
// Enter, and what a switch sent after it.
const pressesLast = /[\r\n\t]+(?:(\S)\1*)?$/u;

/**
 * A terminal without bracketed paste gives no sign of one. What a program reads late begins with the presses of a switch and
 * ends with Enter and more presses: those are kept as keys. As text they come to the same where no switch types them.
 */
function runKeys(run: string): readonly Key[] {
  if (!isPaste(run)) return single(run);
  const first = pressesFirst.exec(run)?.[0] ?? '';
  const rest = first.length > longestHold ? run : run.slice(first.length);
  const before = rest === run ? [] : single(first);
  if (!isPaste(rest)) return [...before, ...single(rest)];
  const last = pressesLast.exec(rest)?.[0] ?? '';
  return [...before, pasteKey(rest.slice(0, rest.length - last.length)), ...single(last)];
}

/** The keys of text that arrived in one read. More than `longestTyping` different characters are a paste. */
export function textKeys(text: string): readonly Key[] {
  const runs = text.replaceAll('\r\n', '\r').match(/[\r\n\t\P{Cc}]+|\p{Cc}/gu) ?? [];
  return runs.flatMap(runKeys);
}
