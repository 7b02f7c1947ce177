/** The bench in German, in a real pseudo-terminal: chosen by a command, kept, and within windows of several sizes. */
import { describe, expect, it } from 'vitest';
import { useBench } from './home.ts';

const env = { LANG: 'de_DE.UTF-8' };

describe('the bench in German', () => {
  const bench = useBench();

  it('changes at once, in all that is drawn, and is so the next time', async () => {
    const first = bench({ args: ['demo/token-pouch.json'] });
    await first.waitFor('now    Carriage on the');
    first.send('language de\r');
    const screen = await first.waitFor('jetzt  Schlitten');
    expect(screen).toContain('Ab hier auf Deutsch.');
    expect(screen).toMatch(/^ *\S.*\[Anschlag\] Streifen/m);
    expect(screen).toContain('Enter bestätigt');
    first.send('quit\r');
    expect((await first.exited).code).toBe(0);
    const second = bench();
    await second.waitFor('jetzt  Schlitten');
    second.send('language auto\r');
    await second.waitFor('The language follows the system: English.');
    expect(await second.waitFor('now    Carriage on the')).not.toContain('jetzt');
  });

  it.each([
    [80, 24],
    [60, 20],
    [40, 24],
  ])('shows the instruction and the row at %i by %i', async (columns, rows) => {
    const terminal = bench({ args: ['demo/rulebook-bag.json'], columns, rows, env });
    await terminal.waitFor('jetzt');
    terminal.send('go stripe 9\r');
    await terminal.waitFor('jetzt  Leg mint');
    terminal.send('next\r');
    const screen = await terminal.waitFor(
      /jetzt {2}Strick eine Reihe nach[\s\S]*Reihe 24(?: von |\/)89[\s\S]*\n> /,
    );
    if (columns >= 80) expect(screen).not.toContain('…');
    for (const label of ['dann', 'Form', 'Stand', 'Garn', 'Bett']) expect(screen).toMatch(`\n${label} `);
    expect(terminal.clears()).toBe(0);
  });
});
