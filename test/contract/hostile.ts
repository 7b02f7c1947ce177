/** Text as somebody might send it who wants more than to be read. Sources: ECMA-48, xterm's control sequences, Unicode UAX 9. */
import { harmfulSigns } from '../../source/shared/plain-text.ts';

/** Each tries to act: set the title, the clipboard, a link; clear, colour, ring; turn the writing round; not be seen. */
export const hostileSigns: readonly string[] = [
  '\x1b]0;OWNED\x07',
  '\x1b]52;c;T1dORUQ=\x1b\\',
  '\x1b]8;;http://example.invalid\x1b\\OWNED\x1b]8;;\x1b\\',
  '\x1b[2J\x1b[H\x1bc',
  '\x1b[5;41m',
  '\x9b31m\x9d0;OWNED\x9c\x85',
  '\x07\x08\x0d\x0b\x0e\x7f',
  '\u202eDENWO\u202c\u2066\u200f',
  '\u2068',
  '\u200b\u2060\ufeff\u00ad\u{e0041}\u3164',
];

export const hostile = `a${hostileSigns.join('b')}z`;

const acting = new RegExp(`[${harmfulSigns}]`, 'u');

/** What in this text would act on a terminal that shows it, or could not be seen. */
export function actsIn(text: string): string | null {
  const found = acting.exec(text);
  return found && JSON.stringify(text.slice(Math.max(0, found.index - 40), found.index + 20));
}
