/** What makers want to do, typed in their own words, in each language: written down by hand, invented; no source. */
import { expect, it } from 'vitest';
import { describeSaid } from '../../test/fixtures/said-and-meant.ts';
import { spoken } from '../../test/fixtures/spoken.ts';
import { chatCommands } from './commands/chat-commands.ts';
import type { Intent } from './grammar/intent.ts';
import { parseLine } from './parse-line.ts';

const known = { yarns: ['plum', 'mint', 'waste'], knittedRows: 63, stripeRows: 2, marks: [] };

/** The line that is done at once or told, as it would be typed. */
function reached(said: string): string {
  const parsed = parseLine(said, spoken(), known);
  if (!parsed.ok) {
    const { fault } = parsed;
    if (fault.code === 'chat/meant') return fault.line;
    return fault.code === 'chat/takes-nothing' ? (fault.instead ?? fault.code) : fault.code;
  }
  return shown(parsed.value);
}

function shown(intent: Intent): string {
  switch (intent.kind) {
    case 'do':
      return { confirm: 'next', back: 'back' }[intent.command.do as string] ?? intent.command.do;
    case 'show':
      return intent.what;
    case 'help':
      return `help ${intent.topic ?? ''}`.trim();
    case 'set':
      return `${intent.change.name} ${intent.change.value}`;
    default:
      return intent.kind;
  }
}

describeSaid('source/chat/wishes.txt', (cases) => {
  it('has forty of them and more', () => expect(cases.length).toBeGreaterThanOrEqual(40));

  it('nine of ten reach what does it, or are told', () => {
    const missed = cases.filter(([said, meant]) => !reached(said).startsWith(meant));
    const told = missed.map(([said, meant]) => `${said}: ${reached(said)}, not ${meant}`);
    expect(missed.length, told.join('\n')).toBeLessThanOrEqual(cases.length / 10);
  });

  it('leaves every example of a command to its command', () => {
    const lost = chatCommands
      .map(({ example }) => reached(example))
      .filter((line) => line.startsWith('chat/'));
    expect(lost).toEqual([]);
  });
});
