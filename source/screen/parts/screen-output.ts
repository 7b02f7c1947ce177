/**
 * The terminal as Ink writes to it, with two things changed. It never clears what has scrolled away, which is the viewer's
 * own; and of a screen that is drawn again only the cells that differ are written, with what was said let in above it.
 *
 * Nothing is drawn before the input has been looked at once more: what was there by then is no answer to the new screen,
 * but a switch that bounced while the program was busy.
 */

import { cellsOf } from '../../shared/plain-text.ts';
import { afterLookAtInput } from '../keys/read-keys.ts';
import { rowChange } from './styled-cells.ts';

/** Things to be seen to before anything more is shown: a press is on disk by then, and meanwhile its screen is drawn. */
export interface BeforeShown {
  /** Does the action when the input has been looked at once more, at the latest before anything is shown. */
  readonly later: (action: () => void) => void;
  /** Does at once all that waits. */
  readonly now: () => void;
}

export function createBeforeShown(): BeforeShown {
  const waiting: (() => void)[] = [];
  const now = (): void => {
    for (const action of waiting.splice(0)) action();
  };
  return {
    later(action) {
      if (waiting.push(action) === 1) afterLookAtInput(now);
    },
    now,
  };
}

/** Where there is no screen all is done at once. */
export const atOnce: BeforeShown = { later: (action) => action(), now: () => undefined };

/** With it Ink itself draws the whole screen, where the one before was higher than the window. */
const clearScreen = '\x1b[2J';
const clearScrollback = '\x1b[3J';
const eraseUp = '\x1b[1A\x1b[2K';

interface ScreenOutput extends NodeJS.WriteStream {
  /** Draws rows in place of those that stand above the cursor; `said` goes above them for good. All end in a newline. */
  readonly draw: (before: string, said: string, now: string) => void;
  /** The window is blank: nothing is left to be changed. */
  readonly clearWindow: () => void;
  /** Writes at once what still waits. */
  readonly flush: () => void;
}

/** Terminals that know these draw all between them at once; around nothing they say nothing. */
const emptyFrame = '\x1b[?2026h\x1b[?2026l';

export function screenOutput(
  output: NodeJS.WriteStream,
  beforeShown: () => void = () => undefined,
  afterLook = afterLookAtInput,
): ScreenOutput {
  let isBlank = false;
  const texts: (() => string)[] = [];
  const whenWritten: (() => void)[] = [];
  const put = (text: string): void => {
    const all = putIn(text).replaceAll(clearScrollback, '').replaceAll(emptyFrame, '');
    const told = whenWritten.splice(0);
    if (all === '' && told.length === 0) return;
    output.write(all, () => {
      for (const tell of told) tell();
    });
  };
  const flush = (): void => {
    beforeShown();
    if (texts.length > 0)
      put(
        texts
          .splice(0)
          .map((text) => text())
          .join(''),
      );
  };
  const later = (text: () => string): void => {
    if (texts.push(text) === 1) afterLook(flush);
  };
  const own: Record<string, unknown> = {
    flush,
    write(text: string, ...rest: readonly unknown[]) {
      const tell = rest.at(-1);
      if (typeof tell === 'function') whenWritten.push(tell as () => void);
      later(() => {
        if (text.includes(clearScreen)) isBlank = false;
        return text;
      });
      return true;
    },
    draw(before: string, said: string, now: string) {
      later(() => {
        const text = isBlank ? said + now : changesFrom(before, said, now, output.rows);
        isBlank = false;
        return text;
      });
    },
    clearWindow() {
      flush();
      isBlank = true;
      put('\x1b[H\x1b[J');
    },
  };
  return new Proxy(output, {
    get: (target, name) => {
      if (typeof name === 'string' && name in own) return own[name];
      const value = Reflect.get(target, name, target);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  }) as ScreenOutput;
}

const rowsOf = (text: string): readonly string[] => text.split('\n').slice(0, -1);

/** What to write where the cursor stands on the row below `before`; it ends on the row below `now`. */
export function changesFrom(before: string, said: string, now: string, windowRows: number): string {
  const [old, wanted, above] = [before, now, said].map(rowsOf) as [Rows, Rows, Rows];
  const isAsHigh = old.length === wanted.length && [before, now].every((text) => text.endsWith('\n'));
  const hasRoom = old.length + above.length < windowRows && (said === '' || said.endsWith('\n'));
  if (!isAsHigh || !hasRoom)
    return `${eraseUp.repeat(Math.max(0, before.split('\n').length - 1))}\r${said}${now}`;
  return letIn(above, old.length) + rowChanges(old, wanted);
}

type Rows = readonly string[];

/** Makes room by newlines at the foot, so that what goes out at the top scrolls away as ever; then moves the screen down. */
function letIn(above: Rows, height: number): string {
  const count = above.length;
  if (count === 0) return '';
  const down = height > 0 ? `\x1b[${height}B` : '';
  return `${'\n'.repeat(count)}\r\x1b[${height + count}A\x1b[${count}L${above.join('\r\n')}\r\n${down}`;
}

/** Row by row from the top; between them the cursor is moved, never the text. */
function rowChanges(old: Rows, wanted: Rows): string {
  let text = '';
  let at = old.length;
  for (const [row, after] of wanted.entries()) {
    const before = old[row] ?? '';
    const change = before === after ? '' : rowChange(putIn(before), putIn(after));
    if (change === '') continue;
    text += moved(at, row) + change;
    at = row;
  }
  return text === '' ? '' : `${text}${moved(at, old.length)}\r`;
}

const moved = (from: number, to: number): string => {
  if (from === to) return '';
  return from < to ? `\x1b[${to - from}B` : `\x1b[${from - to}A`;
};

/**
 * Rows that are finished before Ink sees them. Ink takes all that it draws apart into characters and puts it together
 * again, and of what a press costs that is the most. So a row goes through Ink as one character of a private plane of
 * Unicode, which takes one cell and which no text has, and it is put in its place as it is written.
 *
 * Plane 16 is for private use (The Unicode Standard, 23.5). More rows than are ever said and drawn at once can be told apart.
 */
const firstCharacter = 0x100000;
const mostRows = 4096;

interface FinishedRow {
  readonly text: string;
  readonly cells: number;
}

const rows: FinishedRow[] = [];
const places = new Map<string, number>();
let next = 0;

const style = /\u001b\[[0-9;]*m/g;

/** The character that stands for the row; those that have not been asked for longest are forgotten. */
export function standIn(text: string): string {
  let place = places.get(text);
  if (place === undefined) {
    place = next;
    next = (next + 1) % mostRows;
    const old = rows[place];
    if (old) places.delete(old.text);
    rows[place] = { text, cells: cellsOf(text.replace(style, '')) };
    places.set(text, place);
  }
  return String.fromCodePoint(firstCharacter + place);
}

const standIns = /[\u{100000}-\u{100fff}]/u;
const withGap = /([\u{100000}-\u{100fff}])( *)/gu;

/** The text with each row in the place of its character, and of the blanks for the rest of its cells. */
export const putIn = (text: string): string =>
  standIns.test(text)
    ? text.replace(withGap, (_, character: string, gap: string) => {
        const row = rows[(character.codePointAt(0) ?? 0) - firstCharacter];
        return row ? row.text + gap.slice(row.cells - 1) : gap;
      })
    : text;
