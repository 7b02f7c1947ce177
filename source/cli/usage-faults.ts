import { exhaustive } from '../shared/exhaustive.ts';
import { formatChoice, say } from '../shared/say.ts';
import { optionUsage, usageOf } from './commands.ts';
import type { UsageFault } from './parse-arguments.ts';

export function formatUsageFault(fault: UsageFault): string {
  switch (fault.code) {
    case 'usage/unknown-option':
      return fault.nearest === null
        ? say`There is no option ${fault.option} here; slantwise --help shows them`
        : say`There is no option ${fault.option} here. Did you mean ${fault.nearest}?`;
    case 'usage/unknown-command':
      return fault.nearest === null
        ? say`There is no command ${fault.word}; slantwise --help shows them`
        : say`There is no command ${fault.word}. Did you mean ${fault.nearest}?`;
    case 'usage/option-needs-value':
      return say`${fault.option} needs a value: ${fault.option} ${fault.takes}`;
    case 'usage/option-takes-none':
      return say`${fault.option} takes no value: leave out what follows the equals sign`;
    case 'usage/missing-option':
      return say`${optionUsage(fault.option)} is missing. Usage: ${usageOf(fault.command)}`;
    case 'usage/missing-operand':
      return say`${fault.operand} is missing. Usage: ${usageOf(fault.command)}`;
    case 'usage/too-many-operands':
      return say`${fault.operand} is one too many. Usage: ${usageOf(fault.command)}`;
    case 'usage/not-a-choice':
      return say`${fault.operand} is none of ${formatChoice(fault.choices)}: write one of them`;
    default:
      return exhaustive(fault);
  }
}

/** A first word is a brief's file or a command. */
export const sayNeitherFileNorCommand = (word: string, near: string): string =>
  say`There is no file and no command ${word}. Did you mean ${near}?`;
