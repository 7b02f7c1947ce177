/** A stranger's first evening: the built program in a real pseudo-terminal, from an empty home to the first stripe. */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { writeLog } from '../fixtures/sample-log.ts';
import { type, useBench } from './home.ts';
import { openTerminal } from './rig/pseudo-terminal.ts';

let home: string | null = null;
afterEach(() => {
  if (home) rmSync(home, { recursive: true, force: true });
  home = null;
});
const emptyHome = (): string => {
  home = mkdtempSync(join(tmpdir(), 'slantwise-first-'));
  return home;
};

/** The number of the question under way; none once the plan is shown. */
const questionOn = (screen: string): string | undefined =>
  screen.match(/question \d of 8|Is this the bag/g)?.at(-1);

const stepOn = (screen: string): number => Number(/step (\d+) of/.exec(screen)?.[1]);

describe('a stranger', () => {
  it('knits the first stripe of a bag of their own after at most 12 answers', async () => {
    const terminal = openTerminal({ home: emptyHome() });
    let answers = 0;
    const answer = (line: string, brings: string | RegExp): Promise<string> => {
      answers++;
      return type(terminal, line, brings);
    };
    try {
      await terminal.waitFor('question 1 of 8');
      await answer('Marble bag', 'question 2 of 8');
      await answer('18 round 9 high', 'question 3 of 8');
      await answer('standard 180', 'question 4 of 8');
      // Asking what a word means is no answer, and loses nothing.
      await type(terminal, 'what is a swatch?', /test piece[\s\S]*question 4 of 8/);
      await answer('30 stitches 42 rows', 'question 5 of 8');
      await answer('sunset 400 m per 100 g 50 g', 'question 6 of 8');
      await answer('white 400 m per 100 g 50 g', 'question 7 of 8');
      await answer('2', 'question 8 of 8');
      // What the plan comes to is read by itself, before it is asked whether it will do.
      await answer('60', /Marble bag[\s\S]*page 1 of 1/);
      expect(terminal.transcript()).toContain('shaping moves');
      const bench = await answer('begin', /step 1 of[\s\S]*CAST-ON/);
      expect(answers).toBeLessThanOrEqual(12);
      expect(terminal.transcript()).toMatch(/The brief is kept in\s+\S+marble-bag\.json/);
      // Every step is confirmed by itself, as hands would, until the first stripe is on the needles.
      let screen = bench;
      while (!/stripe +2 of|stripe 2\//.test(screen)) {
        const step = stepOn(screen);
        screen = await type(terminal, 'next', (text: string) => stepOn(text) > step);
      }
      expect(screen).toContain('STRIPES');
      const briefs = join(terminal.home, 'data/slantwise/briefs');
      expect(readdirSync(briefs)).toEqual(['marble-bag.json']);
      expect(JSON.parse(readFileSync(join(briefs, 'marble-bag.json'), 'utf8'))).toMatchObject({
        name: 'Marble bag',
        bag: { contents: { girthCm: 18, heightCm: 9 } },
        yarns: { sunset: { metresPer100g: 400, grams: 50 } },
      });
      expect(existsSync(join(terminal.home, 'data/slantwise/new-bag.json'))).toBe(false);
      expect(terminal.clears()).toBe(0);
    } finally {
      await terminal.close();
    }
  }, 60_000);
});

describe('the questions', () => {
  const bench = useBench();

  it('go on where they were left, and keep what was answered when the program is killed', async () => {
    const first = bench();
    await first.waitFor('question 1 of 8');
    await type(first, 'Dice bag', 'question 2 of 8');
    first.send('\x03');
    expect((await first.exited).code).toBe(130);
    expect(first.transcript()).toContain('Your answers are kept');
    const second = bench();
    await second.waitFor('question 2 of 8');
    expect(second.transcript()).toContain('1 name: Dice bag');
    await type(second, '14 by 18', 'question 3 of 8');
    second.kill('SIGKILL');
    await second.exited;
    const third = bench();
    await third.waitFor('question 3 of 8');
    expect(third.transcript()).toContain('2 size: 14 cm wide and 18 cm deep');
    third.send('quit\r');
    expect((await third.exited).code).toBe(0);
  });

  it('begin the practice bag at a word, which tells of new, and new leaves it saved', async () => {
    const terminal = bench();
    await terminal.waitFor('question 1 of 8');
    await type(terminal, 'practice', 'CAST-ON');
    expect(terminal.transcript()).toContain(
      'This is the practice bag; the word new plans a bag of your own.',
    );
    await type(terminal, 'next 3', 'step 4 of');
    await type(terminal, 'new', 'question 1 of 8');
    expect(terminal.transcript()).toContain('Dice bag is saved, and waits in');
    await type(terminal, 'My pouch', 'question 2 of 8');
    terminal.send('quit\r');
    await terminal.exited;
    // The bag in hand comes before questions that were left open.
    const again = bench();
    await again.waitFor('step 4 of');
    expect(again.transcript()).toContain('Back to Dice bag.');
    await type(again, 'new', 'question 2 of 8');
    expect(again.transcript()).toContain('1 name: My pouch');
    for (const line of ['14 by 18', 'mid 120', 'none', 'plum', 'mint', '2', '2']) {
      const before = questionOn(again.screen());
      await type(again, line, (screen: string) => questionOn(screen) !== before);
    }
    await type(again, 'begin', /My pouch .*CAST-ON/);
    again.send('quit\r');
    expect((await again.exited).code).toBe(0);
    expect(await bench().waitFor('CAST-ON')).toContain('My pouch');
  });

  it('take one answer for an Enter that is held', async () => {
    const terminal = bench({}, { pedalGapMs: 1000 });
    await terminal.waitFor('question 1 of 8');
    terminal.send('\r');
    terminal.send('\r\r\r\r');
    await terminal.waitFor('question 2 of 8');
    terminal.send('answers\r');
    await terminal.waitFor(() => /1 name: My bag\s+2 size: not asked yet/.test(terminal.transcript()));
  });

  it('keep the brief where the maker says, and stay where that cannot be', async () => {
    const terminal = bench({ args: ['new'] });
    for (const number of [1, 2, 3, 4, 5, 6, 7, 8]) {
      await terminal.waitFor(`question ${number} of 8`);
      terminal.send(
        `change ${number} ${['Pouch', '14 by 18', 'mid 120', 'none', 'plum', 'mint', '2', '2'][number - 1]}\r`,
      );
    }
    await terminal.waitFor('page 1 of 1');
    const taken = join(terminal.home, 'taken.json');
    writeFileSync(taken, 'mine');
    await type(terminal, `save ${taken}`, /exists already[\s\S]*Is this the bag/);
    await type(terminal, `save ${join(terminal.home, 'pouch.json')}`, 'CAST-ON');
    expect(readFileSync(taken, 'utf8')).toBe('mine');
    expect(JSON.parse(readFileSync(join(terminal.home, 'pouch.json'), 'utf8'))).toMatchObject({
      name: 'Pouch',
    });
  });

  it.each([
    [80, 24],
    [60, 20],
    [60, 9],
  ])('stay lower than a window of %i by %i, and are drawn again when it changes', async (columns, rows) => {
    const terminal = bench({ columns, rows });
    await terminal.waitFor('What shall the bag be called?');
    await type(terminal, 'Dice bag', 'How wide and deep');
    terminal.resize(columns + 12, rows + 3);
    await terminal.waitFor(
      (screen) =>
        screen.includes('How wide and deep') && (screen.match(/How wide and deep/g) ?? []).length === 1,
    );
    await type(terminal, '? girth', 'thickest');
    expect(terminal.clears()).toBe(0);
  });

  it('are drawn again when the program was stopped and goes on', async () => {
    const shell = bench({ command: 'bash', args: ['--norc', '-i'], env: { PS1: 'shell> ' } });
    await shell.waitFor('shell>');
    shell.send(`'${process.execPath}' '${join(process.cwd(), 'dist/cli.js')}'\r`);
    await shell.waitFor('question 1 of 8');
    shell.send('\x1a');
    await shell.waitFor(/Stopped[\s\S]*shell>$/);
    shell.send('fg\r');
    await shell.waitFor((screen) => !screen.includes('Stopped') && screen.includes('question 1 of 8'));
    await type(shell, 'Dice bag', 'question 2 of 8');
  });

  it('ask in the language of the maker', async () => {
    const terminal = bench({ env: { LANG: 'de_DE.UTF-8' } });
    await terminal.waitFor('Frage 1 von 8');
    await type(terminal, 'Würfelbeutel', 'Frage 2 von 8');
    await type(terminal, '14,5 mal 18', '14,5 cm breit');
  });

  it('tell first of a log that cannot be read: the bag may be in it', async () => {
    const terminal = bench({ args: ['bags'] });
    await terminal.exited;
    const bags = join(terminal.home, 'data/slantwise/bags');
    mkdirSync(bags, { recursive: true });
    writeFileSync(join(bags, 'sleeve.jsonl'), writeLog([]).text.replace('"brief"', '"grief"'));
    const screen = await bench({ columns: 200 }).waitFor('question 1 of 8');
    expect(screen).toContain('sleeve.jsonl cannot be read. If your bag is in it, type quit');
  });
});

describe('the practice bag', () => {
  const bench = useBench();

  it('is opened without a question where that is asked for, as npm start does', async () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));
    const [, options = ''] = /node dist\/cli\.js(.*)$/.exec(scripts.start) ?? [];
    const screen = await bench({ args: options.trim().split(' ') }).waitFor('step 1 of 279');
    expect(screen).toContain('the word new plans a bag of your own');
  });
});
