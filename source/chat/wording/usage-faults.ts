import { exhaustive } from '../../shared/exhaustive.ts';
import { optionUsage, usageOf } from '../cli-commands.ts';
import type { UsageFault } from '../parse-arguments.ts';

export function formatUsageFault(fault: UsageFault): string {
  switch (fault.code) {
    case 'usage/unknown-option':
      return `There is no option ${fault.option} here${fault.nearest === null ? '; slantwise --help shows them' : `. Did you mean ${fault.nearest}?`}`;
    case 'usage/unknown-command':
      return `There is no command ${fault.word}${fault.nearest === null ? '; slantwise --help shows them' : `. Did you mean ${fault.nearest}?`}`;
    case 'usage/option-needs-value':
      return `${fault.option} needs a value: ${fault.option} ${fault.takes}`;
    case 'usage/option-takes-none':
      return `${fault.option} takes no value: leave out what follows the equals sign`;
    case 'usage/missing-option':
      return `${optionUsage(fault.option)} is missing. Usage: ${usageOf(fault.command)}`;
    case 'usage/missing-operand':
      return `${fault.operand} is missing. Usage: ${usageOf(fault.command)}`;
    case 'usage/too-many-operands':
      return `${fault.operand} is one too many. Usage: ${usageOf(fault.command)}`;
    default:
      return exhaustive(fault);
  }
}
