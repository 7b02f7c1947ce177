/** The whole usage, and what is wrong with the arguments. */
import { wrap } from '../chat/wording/page.ts';
import { exhaustive } from '../shared/exhaustive.ts';
import type { Words } from '../wording/words.ts';
import { type CliCommand, flagOf, optionUsage, usageOf } from './command.ts';
import type { UsageFault } from './parse-arguments.ts';

const usageWidth = 84;

/** As printed by `slantwise --help`. */
export function formatUsage(commands: readonly CliCommand[], words: Words): string {
  const { about, anywhere, withoutBrief, exitStatus } = words.cli;
  const lines = commands.flatMap((command) => [
    `  ${usageOf(command)}`,
    `      ${command.summary(words)}`,
    ...command.options.map((option) => `      ${flagOf(option).padEnd(16)}${option.summary(words)}`),
  ]);
  return [...wrap(about, usageWidth), '', ...lines, '', `  ${anywhere}`, '', withoutBrief, exitStatus].join(
    '\n',
  );
}

export function formatUsageFault(fault: UsageFault, { cli }: Words): string {
  switch (fault.code) {
    case 'usage/unknown-option':
      return fault.nearest === null
        ? cli.noOption(fault.option)
        : cli.noOptionBut(fault.option, fault.nearest);
    case 'usage/unknown-command':
      return fault.nearest === null ? cli.noCommand(fault.word) : cli.noCommandBut(fault.word, fault.nearest);
    case 'usage/option-needs-value':
      return cli.needsValue(fault.option, fault.takes);
    case 'usage/option-takes-none':
      return cli.takesNoValue(fault.option);
    case 'usage/missing-option':
      return cli.missing(optionUsage(fault.option), usageOf(fault.command));
    case 'usage/missing-operand':
      return cli.missing(fault.operand, usageOf(fault.command));
    case 'usage/too-many-operands':
      return cli.oneTooMany(fault.operand, usageOf(fault.command));
    case 'usage/not-a-choice':
      return cli.notAChoice(fault.operand, fault.choices);
    default:
      return exhaustive(fault);
  }
}
