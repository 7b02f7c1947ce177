/** The bench in German, in a real pseudo-terminal: chosen by a command, kept, and within windows of several sizes. */
import { describe, expect, it } from 'vitest';
import { useBench } from './home.ts';

const env = { LANG: 'de_DE.UTF-8' };

describe('the bench in German', () => {
  const bench = useBench();

  it('changes at once, in all that is drawn, and is so the next time', async () => {
    const first = bench({ args: ['demo/token-pouch.json'] });
    await first.waitFor(/Carriage\s+on\s+the/);
    first.send('language de\r');
    const screen = await first.waitFor(/Schlitten\s+links/);
    expect(screen).toContain('Ab hier auf Deutsch.');
    expect(screen).toContain('ANSCHLAG');
    expect(screen).toContain('Enter bestätigt');
    first.send('quit\r');
    expect((await first.exited).code).toBe(0);
    const second = bench();
    await second.waitFor(/Schlitten\s+links/);
    second.send('language auto\r');
    await second.waitFor('The language follows the system: English.');
    expect(await second.waitFor(/Carriage\s+on\s+the/)).not.toContain('dann');
  });

  it.each([
    [80, 24],
    [60, 20],
    [40, 24],
  ])('shows the instruction and the row at %i by %i', async (columns, rows) => {
    const terminal = bench({ args: ['demo/rulebook-bag.json'], columns, rows, env });
    await terminal.waitFor('ANSCHLAG');
    terminal.send('go stripe 9\r');
    await terminal.waitFor(/\n {0,2}Nimm mint/);
    terminal.send('next\r');
    await terminal.waitFor(/Reihe 25 von 89 kommt[\s\S]*\n {0,2}Strick eine Reihe nach[\s\S]*\n> /);
    expect(terminal.clears()).toBe(0);
  });
});
