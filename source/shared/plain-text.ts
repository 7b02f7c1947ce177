/**
 * Text from outside made harmless for a terminal: it comes through whole, and cannot act. Controls (C0, C1) are shown as their
 * pictures or U+FFFD; signs that turn the writing round (Unicode UAX 9) or cannot be seen are left out. Line ends stay, and
 * so do joiners and variation selectors, which whole scripts and emoji are made with, and isolates that are closed again.
 */
const controls = '\\u0000-\\u0009\\u000b-\\u001f\\u007f-\\u009f';
const turning = '\\u061c\\u200e\\u200f\\u202a-\\u202e\\u2066\\u2067';
const unseen =
  '\\u00ad\\u115f\\u1160\\u180e\\u200b\\u2028\\u2029\\u2060-\\u2065\\u206a-\\u206f\\u3164\\ufeff\\uffa0\\ufff9-\\ufffb\\u{e0000}-\\u{e007f}\\u{100000}-\\u{10ffff}';
const isolates = '\\u2068\\u2069';

/** The signs that are never let through, as a class for a pattern with the flag u. */
export const harmfulSigns = controls + turning + unseen;

const harmful = new RegExp(`[${harmfulSigns}]`, 'u');
const everyHarmful = new RegExp(harmful, 'gu');
const anyIsolate = new RegExp(`[${isolates}]`);
const everyIsolate = new RegExp(anyIsolate, 'g');

export function harmless(text: string): string {
  const safe = harmful.test(text) ? text.replace(everyHarmful, shownAs) : text;
  return anyIsolate.test(safe) && !areClosed(safe) ? safe.replace(everyIsolate, '') : safe;
}

function shownAs(sign: string): string {
  const code = sign.charCodeAt(0);
  if (code < 0x20) return String.fromCharCode(0x2400 + code);
  return code >= 0x7f && code < 0xa0 ? '\ufffd' : '';
}

/** Each isolate ends on its own line. */
function areClosed(text: string): boolean {
  let depth = 0;
  for (const sign of text) {
    if (sign === '\n' && depth !== 0) return false;
    if (sign === '\u2068') depth++;
    if (sign === '\u2069') depth--;
    if (depth < 0) return false;
  }
  return depth === 0;
}

/** JSON that is the same to whoever parses it, and as harmless to a terminal that shows it. */
export const harmlessJson = (value: unknown, space?: number): string =>
  JSON.stringify(value, null, space).replace(everyInJson, (sign) =>
    sign.replace(/[\s\S]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`),
  );

const everyInJson = new RegExp(`[${harmfulSigns}${isolates}]`, 'gu');

/** A path as it can be pasted behind a command: quoted where a shell would read it otherwise (POSIX.1-2017, 2.2.2). */
export const forShell = (path: string): string =>
  /^[\p{L}\p{N}_./:@%+=,-]+$/u.test(path) ? path : `'${path.replaceAll("'", "'\\''")}'`;

/**
 * An upper bound for the columns a terminal gives the text: terminals differ over emoji, never by more than this. Lines,
 * blocks and shapes (U+2500 to 25FC) take one, save in terminals set up for East Asian text: for those there is plain ASCII.
 */
export function cellsOf(text: string): number {
  if (oneCellEach.test(text)) return text.length;
  let cells = 0;
  for (const letter of text) {
    if (/[\p{M}\p{Cf}]/u.test(letter)) continue;
    const code = letter.codePointAt(0) ?? 0;
    cells += code >= 0x1100 && !isNarrow(code) ? 2 : 1;
  }
  return cells;
}

/** Most texts: letters of the West, and no soft hyphen. */
const oneCellEach = /^[\u0020-\u007e\u00a0-\u00ac\u00ae-\u02ff]*$/;

const isNarrow = (code: number): boolean =>
  (code >= 0x1e00 && code <= 0x206f) || (code >= 0x2500 && code <= 0x25fc);
