/**
 * The grammar of the prompt as a table, out of which help, completion and "did you mean" come; and lines to type, with the
 * needles and yarns of the bag in hand.
 */

import { bedNow, currentStep, type Session } from '../../session/session.ts';
import type { Words } from '../../wording/words.ts';
import { adjustCommands, askCommands } from './asking.ts';
import type { ChatCommand } from './chat-command.ts';
import { goCommands } from './going.ts';
import { keepCommands } from './keeping.ts';

export const chatCommands: readonly ChatCommand[] = [
  ...goCommands,
  ...askCommands,
  ...keepCommands,
  ...adjustCommands,
];

export const findCommand = (word: string): ChatCommand | undefined =>
  chatCommands.find((command) => command.name === word || command.aliases.includes(word));

/** The bed as it should be, said as if it were seen. */
export function findExample(session: Session): string {
  const bed = bedNow(session) ?? currentStep(session)?.after;
  const yarn = bed?.feeder ?? firstYarn(session);
  return bed?.left && bed.right
    ? `find ${bed.left} ${bed.right} ${yarn}`
    : ['find', 'carriage', bed?.carriage ?? 'left'].join(' ');
}

export const weighExample = (session: Session): string => `weigh ${firstYarn(session)} 20 g`;

export const noteExample = (words: Words): string => `note ${words.help.aNote}`;

export const markExample = (words: Words): string => `mark ${words.help.aMark}`;

export const firstYarn = ({ job }: Session): string => job.plan.stripes[0]?.yarn ?? '';

/** Lines to type, each with what it does in a few words. */
export function exampleLines(examples: readonly string[], words: Words): readonly string[] {
  const width = Math.max(...examples.map((example) => example.length));
  return examples.map((example) => `  ${example.padEnd(width)}   ${gistOf(example, words)}`);
}

function gistOf(example: string, words: Words): string {
  const [word = '', rest] = example.split(' ');
  if (word === 'help') return words.help.moreOfThis;
  if (word === 'next' && rest) return words.help.confirmSeveral(rest);
  const command = findCommand(word);
  return command ? words.commands[command.name].gist : '';
}
