/** The built program in a real pseudo-terminal: a whole bag, leaving and coming back, windows of several sizes. */
import { describe, expect, it } from 'vitest';
import { demoJob } from '../fixtures/steps-of-all-kinds.ts';
import { useBench } from './home.ts';

const pouch = 'demo/token-pouch.json';
const pouchSteps = demoJob('token-pouch').stepCount;

describe('at the bench', () => {
  const bench = useBench();

  it('goes through a whole small bag, from the first key to the last', async () => {
    // Keys take turns: the screen answers sooner than one key alone may press again.
    const keys = ['\r', ' ', 'x', 'y', 'z', 'j', 'k', 'v'];
    const terminal = bench(
      { args: [pouch] },
      {
        pedalGapMs: 20,
        pause: 'short',
        pedals: { x: 'confirm', y: 'confirm', z: 'confirm', j: 'confirm', k: 'confirm', v: 'confirm' },
      },
    );
    for (let step = 1; step <= pouchSteps; step++) {
      await terminal.waitFor(`step ${step} of ${pouchSteps}`);
      terminal.send(keys[step % keys.length] ?? '');
    }
    await terminal.waitFor(/is finished: [\s\S]*page 1 of 1/);
    expect(terminal.transcript()).toContain(`+ ${pouchSteps} Even the two ends, knot each, and tie a bow.`);
    expect(terminal.clears()).toBe(0);
    terminal.send('quit\r');
    expect(await terminal.exited).toEqual({ code: 0, signal: undefined });
  }, 120_000);

  it('comes back to the very step, and takes steps back', async () => {
    const first = bench({ args: [pouch] });
    await first.waitFor(`step 1 of ${pouchSteps}`);
    first.send('next 20\r');
    await first.waitFor(`step 21 of ${pouchSteps}`);
    // Typed: Enter alone would come too soon after the one that sent the line, and count as the same press.
    first.send('next\r');
    await first.waitFor(`step 22 of ${pouchSteps}`);
    first.send('quit\r');
    expect((await first.exited).code).toBe(0);
    const second = bench();
    await second.waitFor(`step 22 of ${pouchSteps}`);
    expect(second.transcript()).toContain('Back to Token pouch.');
    second.send('\x1b[D');
    expect(await second.waitFor(`step 21 of ${pouchSteps}`)).toContain('Taken back: step 21');
    second.send('redo\r');
    await second.waitFor('Done again: step 22');
    second.send('go graft\r');
    expect(await second.waitFor('GRAFT')).toContain('No loops on the bed.');
  });

  it('keeps every confirmed step when it is killed', async () => {
    const first = bench({ args: [pouch] });
    await first.waitFor(`step 1 of ${pouchSteps}`);
    first.send('next 33\r');
    await first.waitFor(`step 34 of ${pouchSteps}`);
    first.kill('SIGKILL');
    await first.exited;
    await bench().waitFor(`step 34 of ${pouchSteps}`);
  });

  it('leaves on Ctrl-C with status 130 and the terminal as it was', async () => {
    const terminal = bench({ args: [pouch] });
    await terminal.waitFor('step 1 of');
    terminal.send('\x03');
    expect((await terminal.exited).code).toBe(130);
    expect(terminal.raw()).toContain('\x1b[?25h');
    expect(terminal.raw().lastIndexOf('\x1b[?2004l')).toBeGreaterThan(
      terminal.raw().lastIndexOf('\x1b[?2004h'),
    );
  });

  it.each([
    [80, 24],
    [60, 20],
    [100, 14],
    [60, 9],
    [250, 60],
  ])('shows the instruction and the counters at %i by %i, with nothing cut off', async (columns, rows) => {
    const terminal = bench({ args: ['demo/rulebook-bag.json'], columns, rows });
    await terminal.waitFor('Carriage on the');
    terminal.send('go stripe 9\r');
    await terminal.waitFor(/\n {0,2}Take mint/);
    terminal.send('next\r');
    await terminal.waitFor(/stripe 9 of 30[\s\S]*\n {0,2}Knit one row to the[\s\S]*\n> /);
    expect(terminal.clears()).toBe(0);
  });

  it('is drawn again when the window changes, leaving nothing behind', async () => {
    const terminal = bench({ args: [pouch] });
    await terminal.waitFor('step 1 of');
    for (const [columns, rows] of [
      [60, 20],
      [100, 30],
      [70, 24],
    ] as const) {
      terminal.resize(columns, rows);
      const screen = await terminal.waitFor(
        (text) =>
          text.split('\n').filter((line) => line.includes('CAST-ON')).length === 1 &&
          /step 1( of |\/)/.test(text),
      );
      expect(screen.match(/Carriage on/g)).toHaveLength(1);
    }
  });

  it('uses no colour where none is wanted, and says by letters what colour says', async () => {
    const terminal = bench({ args: [pouch], env: { NO_COLOR: '1' } });
    await terminal.waitFor('step 1 of');
    terminal.send('go stripe 4\r');
    expect(await terminal.waitFor('stripe 4 of')).toMatch(/P+M+P+m+/);
    expect(terminal.raw()).not.toMatch(/\x1b\[[34]8;/);
  });

  it.each([
    [80, 24],
    [60, 20],
  ])('draws the strip as it grows, and the bag, at %i by %i', async (columns, rows) => {
    const terminal = bench({ args: [pouch], columns, rows });
    await terminal.waitFor(/step 1( of |\/)/);
    terminal.send('go row 6\r');
    await terminal.waitFor('STRIPES');
    terminal.send('draw strip\r');
    expect(await terminal.waitFor(/5 of 15 rows done/)).toContain('Knit one row');
    terminal.send('draw bag\r');
    await terminal.waitFor('4.6 cm');
    terminal.resize(columns + 10, rows + 4);
    await terminal.waitFor((screen) => screen.split('\n').length <= rows + 4 && screen.includes('4.6 cm'));
    expect(terminal.clears()).toBe(0);
    terminal.send('draw off\r');
    await terminal.waitFor(/row \d+ of \d+ comes|rows done/);
  });

  it('answers a typing slip with what was meant, and completes words', async () => {
    const terminal = bench({ args: [pouch] });
    await terminal.waitFor('step 1 of');
    terminal.send('nxet\r');
    await terminal.waitFor('Did you mean next?');
    terminal.send('whe\t\r');
    await terminal.waitFor(() => terminal.transcript().includes('You are here: step 1 of'));
    terminal.send('\x1b[A');
    await terminal.waitFor('> where');
  });
});
