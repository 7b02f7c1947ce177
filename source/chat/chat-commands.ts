/** The grammar of the prompt as a table: help, completion and "did you mean" all come out of it. */
import { adjustCommands } from './commands/adjusting.ts';
import { askCommands } from './commands/asking.ts';
import type { ChatCommand } from './commands/chat-command.ts';
import { keepCommands } from './commands/keeping.ts';
import { moveCommands } from './commands/moving.ts';

export const chatCommands: readonly ChatCommand[] = [
  ...moveCommands,
  ...askCommands,
  ...keepCommands,
  ...adjustCommands,
];

export const findCommand = (word: string): ChatCommand | undefined =>
  chatCommands.find((command) => command.name === word || command.aliases.includes(word));
