/** An evening: the built program in a real pseudo-terminal of 80 by 24, from no swatch at all to a second bag planned from the first. */
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { type, useBench } from './home.ts';

/** Longer than one press of a switch may chatter. */
const bounceMs = 600;

describe('an evening', () => {
  const bench = useBench();

  it('goes from a swatch to a second bag, with another looked at between', async () => {
    const first = bench({ columns: 80, rows: 24 });
    await first.waitFor('question 1 of 8');
    await type(first, 'Dice bag', 'question 2 of 8');
    await type(first, 'a set of dice', 'question 3 of 8');
    expect(first.transcript()).toMatch(/for a set of seven dice, 20 cm round, 4 cm high and\s+6 cm thick/);
    await type(first, '120 needles 6 mm', 'question 4 of 8');
    // No swatch yet: it is guided. The evening ends while it rests, and the place is kept.
    await type(first, 'knit', 'the swatch, step 1 of 15');
    await type(first, '6', 'the swatch, step 2 of 15');
    for (let step = 3; step <= 11; step++) await type(first, 'done', `the swatch, step ${step} of 15`);
    first.send('quit\r');
    expect((await first.exited).code).toBe(0);

    const second = bench({ columns: 80, rows: 24 });
    await second.waitFor('the swatch, step 11 of 15');
    await type(second, 'done', 'the swatch, step 12 of 15');
    await type(second, '19.2', 'the swatch, step 13 of 15');
    await type(second, '21.6', 'the swatch, step 14 of 15');
    await type(second, '0', 'the swatch, step 15 of 15');
    await type(second, '68 cm', 'question 5 of 8');
    await type(second, 'plum 190 m 60 g', 'question 6 of 8');
    await type(second, 'mint 190 m 45 g', 'question 7 of 8');
    await type(second, '2', 'question 8 of 8');
    await type(second, '2', 'page 1 of 1');
    await pause(bounceMs);
    await type(second, '', 'Is this the bag you want?');
    // Measured, and enough yarn: nothing is asked twice. An Enter that follows at once would be taken for a bounce.
    await pause(bounceMs);
    const begun = await type(second, '', /step 1 of \d+[\s\S]*CAST-ON/);
    const steps = Number(/step 1 of (\d+)/.exec(begun)?.[1]);
    await type(second, 'next 5', 'step 6 of');
    await type(second, 'keep yarns', 'Kept: yarn mint');
    second.send('\x03');
    expect((await second.exited).code).toBe(130);

    const third = bench({ columns: 80, rows: 24 });
    await third.waitFor('step 6 of');
    await type(third, 'practice', 'This is the practice bag');
    await type(third, 'open dice', 'step 6 of');
    // A long answer is read by itself, and Enter confirms nothing meanwhile.
    await type(third, 'plan', 'page 1 of');
    await pause(bounceMs);
    third.send('\r');
    await third.waitFor('page 2 of');
    third.send('\x1b');
    await third.waitFor('step 6 of');
    third.send(`next ${steps - 5}\r`);
    await third.waitFor(/Dice bag is finished: [\s\S]*Planned: [\s\S]*page 1 of/);
    await type(third, 'measured 10.6 11.2', 'Measured: 10.6 cm wide');
    await type(third, 'weigh plum 50', 'Weighed plum: 10 g used');
    await type(third, 'another larger', /Dice bag 2 .*CAST-ON/);
    expect(third.transcript()).toMatch(/Dice bag 2, to match Dice bag: a size up/);
    await type(third, 'bags', /1 .*Dice bag 2, step 1 of[\s\S]*Dice bag, finished/);
    await type(third, 'shelf', /plum #6b2d5c, 190 m to 100 g, 50 g left/);
    third.send('quit\r');
    expect((await third.exited).code).toBe(0);
  }, 60_000);
});
