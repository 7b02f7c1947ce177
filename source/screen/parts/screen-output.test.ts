/** A screen changed cell by cell looks as one drawn again, whatever stood there and whatever was said above it. */
import xterm from '@xterm/headless';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tries } from '../../../test/tools/tries.ts';
import { formatLine, type Line } from '../../sheet/terminal/ansi.ts';
import { changesFrom, createBeforeShown, screenOutput } from './screen-output.ts';
import { cellsIn, rowChange } from './styled-cells.ts';

const columns = 24;
const rows = 12;

const colour = fc.constantFrom(null, '#6b2d5c', '#9fd8c2', '#ffffff');
const letters = fc.array(fc.constantFrom('a', ' ', ' ', '0', 'ä', '█', '▄', '●', '►', '宽'), {
  maxLength: 5,
});
const span = fc.record({
  text: letters.map((all) => all.join('')),
  ink: colour,
  ground: colour,
  bold: fc.boolean(),
  dim: fc.boolean(),
  inverse: fc.boolean(),
});
const row = fc.array(span, { maxLength: 4 }).map((line: Line) => formatLine(line, 'true'));
const block = (minLength: number, maxLength: number) =>
  fc.array(row, { minLength, maxLength }).map((all) => all.map((text) => `${text}\n`).join(''));
/** Often much the same as what stood there, as a bench is from step to step. */
const drawings = fc
  .record({ before: fc.array(row, { minLength: 1, maxLength: 6 }), news: fc.array(row, { maxLength: 6 }) })
  .map(({ before, news }) => ({
    before: before.map((text) => `${text}\n`).join(''),
    now: before.map((text, i) => `${i % 2 === 0 ? text : (news[i] ?? text)}\n`).join(''),
  }));

async function shownBy(...texts: readonly string[]) {
  const terminal = new xterm.Terminal({ cols: columns, rows, allowProposedApi: true, convertEol: true });
  for (const text of texts) await new Promise<void>((done) => terminal.write(text, done));
  const { active } = terminal.buffer;
  const cells = Array.from({ length: active.length }, (_, y) =>
    Array.from({ length: columns }, (_, x) => {
      const cell = active.getLine(y)?.getCell(x);
      if (!cell) return '';
      const flags = [cell.isBold(), cell.isDim(), cell.isInverse()].map(Boolean);
      return [cell.getChars() || ' ', cell.getFgColor(), cell.getBgColor(), ...flags].join();
    }).join(' '),
  );
  const blank = Array.from({ length: columns }, () => ' ,-1,-1,false,false,false').join(' ');
  const last = cells.findLastIndex((line) => line !== blank);
  return { cells: cells.slice(0, last + 1), cursor: [active.baseY + active.cursorY, active.cursorX] };
}

describe('what differs', () => {
  it('makes the same screen, with the same lines scrolled away', async () => {
    await fc.assert(
      fc.asyncProperty(block(0, 14), drawings, block(0, 8), async (earlier, { before, now }, said) => {
        const changed = await shownBy(earlier + before, changesFrom(before, said, now, rows));
        expect(changed).toEqual(await shownBy(earlier + said + now));
      }),
      { numRuns: tries(300) },
    );
  });

  it('is written whole where the screen becomes higher or lower', async () => {
    await fc.assert(
      fc.asyncProperty(block(0, 5), block(1, 6), block(1, 6), async (earlier, before, now) => {
        const changed = await shownBy(earlier + before, changesFrom(before, '', now, rows));
        expect(changed).toEqual(await shownBy(earlier + now));
      }),
    );
  });

  it('is nothing where nothing does, and one cell where one does', () => {
    const line = (step: number) =>
      formatLine([{ text: 'Dice bag ', bold: true }, { text: `step ${step}` }], 'true');
    expect(rowChange(line(7), line(7))).toBe('');
    expect(rowChange(line(7), line(8))).toBe('\x1b[15G8');
  });

  it('is not sought where a character may be two cells wide', () => {
    expect(cellsIn('宽')).toBeNull();
    expect(cellsIn('► L8 ●')).toHaveLength(6);
  });
});

it('draws again in a window that was cleared', () => {
  const written: string[] = [];
  const stream = { rows: 24, write: (text: string) => written.push(text) };
  const output = screenOutput(stream as unknown as NodeJS.WriteStream, undefined, (action) => action());
  output.draw('a\nb\n', '', 'a\nc\n');
  output.clearWindow();
  output.draw('a\nc\n', '', 'a\nc\n');
  expect(written).toEqual(['\x1b[1A\x1b[1Gc\x1b[1B\r', '\x1b[H\x1b[J', 'a\nc\n']);
});

it('writes when the input has been looked at, all at once and in order, and nothing where nothing is drawn', () => {
  const written: string[] = [];
  const stream = { rows: 24, write: (text: string) => written.push(text) };
  const looks: (() => void)[] = [];
  const output = screenOutput(stream as unknown as NodeJS.WriteStream, undefined, (action) =>
    looks.push(action),
  );
  const frame = (before: string, now: string): void => {
    output.write('\x1b[?2026h');
    output.draw(before, '', now);
    output.write('\x1b[?2026l');
  };
  frame('a\n', 'b\n');
  frame('b\n', 'c\n');
  expect(written).toEqual([]);
  for (const look of looks.splice(0)) look();
  expect(written).toHaveLength(1);
  expect(written[0]?.replace(/\x1b\[[^a-zA-Z]*[a-zA-Z]|\r/g, '')).toBe('bc');
  frame('c\n', 'c\n');
  for (const look of looks) look();
  expect(written).toHaveLength(1);
});

it('has done what must be done before anything is shown', () => {
  const done: string[] = [];
  const stream = { rows: 24, write: () => done.push('shown') };
  const { later, now } = createBeforeShown();
  const output = screenOutput(stream as unknown as NodeJS.WriteStream, now, () => undefined);
  output.draw('a\n', '', 'b\n');
  later(() => done.push('on disk'));
  expect(done).toEqual([]);
  output.flush();
  expect(done).toEqual(['on disk', 'shown']);
});

it('never clears what has scrolled away', () => {
  const written: string[] = [];
  const stream = { rows: 24, write: (text: string) => written.push(text) };
  screenOutput(stream as unknown as NodeJS.WriteStream, undefined, (action) => action()).write(
    '\x1b[2J\x1b[3J\x1b[Hhere',
  );
  expect(written).toEqual(['\x1b[2J\x1b[Hhere']);
});
