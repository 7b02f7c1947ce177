/** Losing and finding the place in a real pseudo-terminal: a slip mended, a power cut, rows ripped back, a plan changed. */
import { describe, expect, it } from 'vitest';
import { type, useBench } from './home.ts';
import type { Terminal } from './rig/pseudo-terminal.ts';

/** 46 stitches from L8 to R38: move 12, after row 24, takes L19 … R27 to L20 … R26. */
const dice = 'demo/dice-bag.json';

/** A key that comes again at once is held to have bounced, so a press that follows a line is no Enter. */
describe('never lost', () => {
  const bench = useBench();
  const atStep = async (step: number): Promise<Terminal> => {
    const terminal = bench({ args: [dice], rows: 40 });
    await terminal.waitFor('step 1 of 279');
    await type(terminal, `go step ${step}`, `step ${step} of 279`);
    return terminal;
  };

  it('finds a forgotten decrease and guides through its mend', async () => {
    const terminal = await atStep(72);
    const slip = 'The decrease of move 12, or of one before it, is missing';
    await type(terminal, 'find L20 R27 46 stitches carriage right', slip);
    await type(terminal, 'find and firm', 'at which move is it?');
    await type(terminal, 'find and move 12', 'Push R27 out of work');
    await type(terminal, 'choose 2', '\n  Repair, 1 of 1: With the tool, lift the loops of R27 and R26');
    terminal.send(' ');
    const after = await terminal.waitFor(/Repaired: step 72[\s\S]*\n {0,2}Take mint/);
    expect(after).toContain('Edges L20 and R26');
    terminal.kill('SIGKILL');
    await terminal.exited;
    await bench({ rows: 40 }).waitFor(/\n {0,2}Take mint/);
  });

  it('goes on after a power cut and a wrong guess', async () => {
    const first = await atStep(70);
    await type(first, 'next 5', /26 of 63/);
    first.kill('SIGKILL');
    await first.exited;
    const second = bench({ rows: 40 });
    await second.waitFor('step 75 of 279');
    await type(second, 'go row 24', 'step 69 of 279');
    await type(second, 'find L20 R26 plum', 'places look like that');
    const found = await type(second, 'find and carriage right', 'or go step 75');
    expect(found).toContain('26 rows knitted, edges L20 and R26');
    await type(second, 'choose', /> choose\s[\s\S]*\n {0,2}Left edge, increase/);
    second.send(' ');
    await second.waitFor('step 76 of 279');
  });

  it('rips back two rows, a step at a time', async () => {
    const terminal = await atStep(75);
    await type(terminal, 'rip row 25', '5 steps back, to 24 rows on the counter');
    await type(terminal, 'choose', '\n  Back, 1 of 5: Take the claw weights off');
    await type(terminal, 'next', '\n  Back, 2 of 5: Pull out the row of plum');
    await type(terminal, 'next', '\n  Back, 3 of 5:');
    await type(terminal, 'next', '\n  Back, 4 of 5: Take plum out of the feeder');
    await type(terminal, 'next', '\n  Back, 5 of 5: Hang the claw weights again');
    terminal.send(' ');
    const screen = await terminal.waitFor(/Ripped back: step 72[\s\S]*\n {0,2}Take mint/);
    expect(screen).toMatch(/24 of 63/);
    expect(screen).not.toContain('\n  Back');
  });

  it('keeps a plan that was changed, and begins another bag like it', async () => {
    const first = await atStep(69);
    await type(first, 'note mint is tight', 'Noted: mint is tight');
    await type(first, 'replan 20 stitches 9.4 cm 30 rows 10.5 cm', 'To go on like one of them');
    await type(first, 'choose 4', 'Replanned: 60 rows round, 12.5 cm wide');
    await first.waitFor(/step 69 of \d+[\s\S]*24 of 59/);
    const bags = await type(first, 'bags', 'another like one of them');
    const [, log = ''] = /(\S+dice-bag-[\s\S]+?\.jsonl)/.exec(bags) ?? [];
    first.send('quit\r');
    expect((await first.exited).code).toBe(0);
    const second = bench({ rows: 40 });
    await second.waitFor(/step 69 of \d+[\s\S]*24 of 59/);
    second.send('quit\r');
    await second.exited;
    const path = log.replace(/\s+/g, '');
    const third = bench({ args: ['work', '--like', path], rows: 40 });
    const screen = await third.waitFor(/step 1 of \d+/);
    expect(screen).toContain('60 rows round, 12.5 cm wide');
    expect(screen).toContain('Last time, at step 69: mint is tight');
  });
});
