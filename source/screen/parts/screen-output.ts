/**
 * The terminal as Ink writes to it, with two things changed. It never clears what has scrolled away, which is the viewer's
 * own; and of a screen that is drawn again only the cells that differ are written, with what was said let in above it.
 */
import { putIn } from './finished-rows.ts';
import { rowChange } from './styled-cells.ts';

const clearScrollback = '\x1b[3J';
const eraseUp = '\x1b[1A\x1b[2K';

export interface ScreenOutput extends NodeJS.WriteStream {
  /** Draws rows in place of those that stand above the cursor; `said` goes above them for good. All end in a newline. */
  readonly draw: (before: string, said: string, now: string) => void;
  /** The window is blank: nothing is left to be changed. */
  readonly clearWindow: () => void;
}

export function screenOutput(output: NodeJS.WriteStream): ScreenOutput {
  let isBlank = false;
  const write = (text: string, ...rest: readonly unknown[]): boolean =>
    Reflect.apply(output.write, output, [putIn(text).replaceAll(clearScrollback, ''), ...rest]);
  const own: Record<string, unknown> = {
    write,
    draw(before: string, said: string, now: string) {
      const text = isBlank ? said + now : changesFrom(before, said, now, output.rows);
      isBlank = false;
      if (text !== '') write(text);
    },
    clearWindow() {
      isBlank = true;
      write('\x1b[H\x1b[J');
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
