/** A log played again in a real pseudo-terminal. The log is invented; its times add up to 37.03 s as played. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { confirm, type SampleLine, writeLog } from '../fixtures/sample-log.ts';
import { slantwise } from '../tools/slantwise.ts';
import { useBench } from './home.ts';
import { useTimedPlayer } from './timed-player.ts';

const anHour = 3_600_000;
const lines: readonly SampleLine[] = [
  confirm(1, 5000),
  confirm(1, 3000),
  { event: { do: 'note', text: 'mint feels tighter' }, afterMs: 2000 },
  confirm(1, 2000),
  { event: { do: 'quit' }, afterMs: 30 },
  { event: { do: 'resume', at: '2031-03-05T19:30:00.000Z' }, afterMs: 0 },
  confirm(1, anHour),
  { event: { do: 'mark', name: 'before the comb' }, afterMs: 1000 },
];
const { stepCount } = (writeLog(lines).states[0] as { session: { job: { stepCount: number } } }).session.job;
const log = writeLog([...lines, confirm(stepCount - 4, 4000), { event: { do: 'finished' }, afterMs: 0 }]);

const folder = mkdtempSync(join(tmpdir(), 'slantwise-player-'));
const path = join(folder, 'sleeve.jsonl');
writeFileSync(path, log.bytes);
afterAll(() => rmSync(folder, { recursive: true }));

const at = (step: number): string => `step ${step} of ${stepCount}`;

describe('a log played with the clock in our hands', () => {
  const play = useTimedPlayer();

  it('keeps the recorded pace', async () => {
    const player = await play(path);
    expect(await player.waitFor(at(1))).toContain('0:00 of 0:37  1x  playing');
    await player.pass(4);
    expect(await player.waitFor('0:04 of 0:37')).toContain(at(1));
    await player.pass(1);
    await player.waitFor(at(2));
    await player.pass(3);
    await player.waitFor(at(3));
  });

  it('goes faster and slower', async () => {
    const player = await play(path);
    player.send('+');
    await player.waitFor('2x');
    await player.pass(3);
    expect(await player.waitFor(at(2))).toContain('0:06 of 0:37');
    player.send('-');
    await player.waitFor(/ 1x/);
    player.send('-');
    await player.waitFor('0.5x');
    await player.pass(2);
    await player.waitFor('0:07 of 0:37');
  });

  it('shows a note when it was made, and takes an hour of rest for 20 s', async () => {
    const player = await play(path);
    await player.pass(9);
    expect(await player.waitFor('0:09 of')).not.toContain('mint feels tighter');
    await player.pass(1);
    expect(await player.waitFor('note   mint feels tighter')).toContain(at(3));
    await player.pass(2);
    expect(await player.waitFor(at(4))).not.toContain('note   ');
    await player.pass(20);
    // The clock is drawn once a second, so the last second may not be on the screen yet.
    expect(await player.waitFor(/0:3[12] of/)).toContain(at(4));
    await player.pass(1);
    expect(await player.waitFor(at(5))).toContain('Back at the machine, 2031-03-05');
  });

  it('keeps its place while it is paused', async () => {
    const player = await play(path);
    await player.pass(4);
    await player.waitFor('0:04 of');
    player.send(' ');
    await player.waitFor('0:04 of 0:37  1x  paused');
    await player.pass(30);
    expect(player.screen()).toContain('0:04 of 0:37  1x  paused');
    player.send(' ');
    await player.waitFor('playing');
    await player.pass(1);
    await player.waitFor(at(2));
  });

  it('stops at a mark, and plays on from there to the end', async () => {
    const player = await play(path);
    await player.pass(34);
    await player.waitFor('mark: before the comb');
    await player.pass(10);
    expect(player.screen()).toContain(at(5));
    player.send(' ');
    await player.waitFor('playing');
    await player.pass(4);
    await player.waitFor('The bag is finished.');
    const screen = await player.waitFor(/\d cm wide, .* below the cord/);
    expect(screen).toMatch(/\[#+\] {2}0:37 of 0:37 {2}1x {2}the end/);
  });

  it('goes one step on and back, to the next mark and to the end', async () => {
    const player = await play(path);
    player.send('\x1b[C');
    expect(await player.waitFor(at(2))).toContain('0:05 of 0:37  1x  paused');
    player.send('\x1b[C');
    await player.waitFor(at(3));
    player.send('\x1b[D');
    await player.waitFor(at(2));
    player.send('\x1b[D');
    await player.waitFor(at(1));
    player.send('\x1b[D');
    await player.waitFor('This is the beginning of the log.');
    player.send('n');
    expect(await player.waitFor('mark: ')).toContain(at(5));
    player.send('n');
    await player.waitFor('There is no mark further on.');
    player.send('e');
    await player.waitFor('the end');
    player.send('\x1b[C');
    await player.waitFor('This is the end of the log.');
  });

  it('goes to a part of the work or a stripe that was reached, and says so where it was not', async () => {
    const player = await play(path);
    await player.pass(12);
    player.send('go cast-on\r');
    await player.waitFor(at(1));
    for (const unknown of ['go row 3', 'go grfat', 'help']) {
      player.send('go stripe 3\r');
      await player.waitFor('The log never comes to stripe 3.');
      player.send(`${unknown}\r`);
      await player.waitFor('A replay goes to a part of the work or to a stripe.');
    }
  });

  it.each([
    [80, 24],
    [60, 20],
    [100, 14],
    [44, 9],
    [200, 60],
  ])('stays lower than a window of %i by %i', async (columns, rows) => {
    const player = await play(path, columns, rows);
    player.send('n');
    await player.waitFor('mark');
    player.send('e');
    const screen = await player.waitFor('the end');
    expect(screen).toContain('The bag is finished.');
    expect(player.clears()).toBe(0);
    expect(player.transcript().split('\n').length).toBeLessThanOrEqual(rows);
  });

  it('is drawn again when the window changes, and leaves what stood above it', async () => {
    const player = await play(path);
    for (const [columns, rows] of [
      [60, 18],
      [100, 30],
      [70, 12],
    ] as const) {
      player.resize(columns, rows);
      await player.waitFor(
        (text) =>
          text.match(/^play /gm)?.length === 1 &&
          text.match(/CAST-ON|NEEDLES/g)?.length !== undefined &&
          text.split('\n').length < rows,
      );
    }
    expect(player.clears()).toBe(0);
  });

  it('leaves on q, and on Ctrl-C with status 130', async () => {
    const player = await play(path);
    player.send('q');
    expect((await player.exited).code).toBe(0);
    const other = await play(path);
    other.send('\x03');
    expect((await other.exited).code).toBe(130);
  });
});

describe('slantwise replay', () => {
  const bench = useBench();

  it('plays in the bench screen and writes nothing', async () => {
    const player = bench({ args: ['replay', path, '--speed', '64'] });
    expect(await player.waitFor('mark: ')).toMatch(/rows done|comes/);
    player.send(' ');
    await player.waitFor('the end');
    player.send('\x1b[D');
    await player.waitFor(at(5));
    player.send('q');
    expect((await player.exited).code).toBe(0);
    expect(readFileSync(path).equals(log.bytes)).toBe(true);
  });

  it('goes to a part of the work and to a stripe of a whole bag', async () => {
    const player = bench({ args: ['replay', 'demo/token-pouch.jsonl'] });
    await player.waitFor('step 1 of');
    player.send('go graft\r');
    await player.waitFor('GRAFT');
    player.send('go stripe 3\r');
    expect(await player.waitFor('stripe 3 of 8')).toContain('STRIPES');
  });

  it('prints text outside a terminal, and events as JSON', () => {
    const run = (...args: readonly string[]): string => slantwise(['replay', path, ...args]).stdout;
    expect(run()).toMatch(/^Card sleeve, begun 2031-03-04\n[\s\S]*Noted: mint feels[\s\S]*is finished\.\n$/);
    const events = run('--json').trimEnd().split('\n');
    expect(events.map((event) => JSON.parse(event).do)).toEqual([
      ...lines.map(({ event }) => event.do),
      'confirm',
      'finished',
    ]);
  });

  it('plays a lesson made from a copy, its lines shown and its pauses kept', async () => {
    const [additions, copy] = [join(folder, 'lines.txt'), join(folder, 'lesson.jsonl')];
    writeFileSync(additions, '# for Tuesday\n2 say Look at the left edge.\n2 pause\n\n4 mark the comb\n');
    const { stdout } = slantwise(['lesson', path, additions, '--out', copy]);
    expect(stdout).toBe(`3 lines added; the lesson is in ${copy}. Play it: slantwise replay ${copy}\n`);
    const player = bench({ args: ['replay', copy, '--speed', '64'] });
    const screen = await player.waitFor('a place to pause');
    expect(screen).toContain('lesson Look at the left edge.');
    expect(screen).toContain(at(2));
    player.send(' ');
    expect(await player.waitFor('mark: the comb')).toContain(at(4));
    expect(readFileSync(path).equals(log.bytes)).toBe(true);
  });
});
