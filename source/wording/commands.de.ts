import type { Amounts } from './amounts.ts';
import type { CommandsWords } from './commands.en.ts';

export const commands = (_: Amounts): CommandsWords => ({});
