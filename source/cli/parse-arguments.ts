/** Reads the arguments by the table of commands; and the whole usage, and what is wrong with them. */

import { nearest } from '../shared/nearest.ts';
import { exhaustive, fail, type Result, succeed } from '../shared/result.ts';
import { wrap } from '../wording/page.ts';
import type { Words } from '../wording/words.ts';
import { type CliCommand, type CliOption, flagOf, optionUsage, usageLine } from './command.ts';

/** What the arguments ask for; `given` holds options by name, a plain switch as an empty text. */
export type Arguments =
  | {
      readonly kind: 'run';
      readonly command: CliCommand;
      readonly operands: readonly string[];
      readonly given: ReadonlyMap<string, string>;
    }
  | { readonly kind: 'help' }
  | { readonly kind: 'version' };

type UsageFault =
  | { readonly code: 'usage/unknown-option'; readonly option: string; readonly nearest: string | null }
  | { readonly code: 'usage/unknown-command'; readonly word: string; readonly nearest: string | null }
  | { readonly code: 'usage/option-needs-value'; readonly option: string; readonly takes: string }
  | { readonly code: 'usage/option-takes-none'; readonly option: string }
  | { readonly code: 'usage/missing-option'; readonly command: CliCommand; readonly option: CliOption }
  | { readonly code: 'usage/missing-operand'; readonly command: CliCommand; readonly operand: string }
  | { readonly code: 'usage/too-many-operands'; readonly command: CliCommand; readonly operand: string }
  | {
      readonly code: 'usage/not-a-choice';
      readonly operand: string;
      readonly choices: readonly string[];
    };

/** A token as Node's own argument parser gives it. */
export type ArgumentToken =
  | {
      readonly kind: 'option';
      readonly name: string;
      readonly rawName: string;
      readonly value?: string | undefined;
    }
  | { readonly kind: 'positional'; readonly value: string }
  | { readonly kind: 'option-terminator' };

/** Reads tokens against the table of commands. A first word that names none is the brief for the first of them. */
export function parseArguments(
  tokens: readonly ArgumentToken[],
  commands: readonly [CliCommand, ...CliCommand[]],
): Result<Arguments, UsageFault> {
  const words = tokens.filter((token) => token.kind === 'positional').map((token) => token.value);
  const options = tokens.filter((token) => token.kind === 'option');
  if (options.some(({ rawName }) => rawName === '--help' || rawName === '-h'))
    return succeed({ kind: 'help' });
  if (options.some(({ rawName }) => rawName === '--version')) return succeed({ kind: 'version' });
  const named = commands.find(({ name }) => name === words[0]);
  const command = named ?? commands[0];
  const operands = named ? words.slice(1) : words;
  const fault = (named ? null : checkWord(operands, commands)) ?? checkOperands(command, operands);
  if (fault) return fail(fault);
  const given = new Map<string, string>();
  for (const option of options) {
    const read = readOption(command, option);
    if (!read.ok) return read;
    given.set(option.name, read.value);
  }
  const missing = command.options.find((option) => option.required && !given.has(option.name));
  if (missing) return fail({ code: 'usage/missing-option', command, option: missing });
  return succeed({ kind: 'run', command, operands, given });
}

/** A first word with more behind it was meant as a command. */
function checkWord([word, ...more]: readonly string[], commands: readonly CliCommand[]): UsageFault | null {
  if (word === undefined || more.length === 0) return null;
  const near = nearest(
    word,
    commands.map(({ name }) => name),
  );
  return { code: 'usage/unknown-command', word, nearest: near };
}

function checkOperands(command: CliCommand, operands: readonly string[]): UsageFault | null {
  const missing = command.takes.find((operand, i) => !operand.startsWith('[') && operands[i] === undefined);
  if (missing) return { code: 'usage/missing-operand', command, operand: missing };
  const repeats = command.takes.at(-1)?.endsWith('...]') ?? false;
  const extra = repeats ? undefined : operands[command.takes.length];
  if (extra !== undefined) return { code: 'usage/too-many-operands', command, operand: extra };
  const [operand = ''] = operands;
  return !command.choices || command.choices.includes(operand)
    ? null
    : { code: 'usage/not-a-choice', operand, choices: command.choices };
}

type OptionToken = Extract<ArgumentToken, { readonly kind: 'option' }>;

function readOption(
  { options }: CliCommand,
  { name, rawName, value }: OptionToken,
): Result<string, UsageFault> {
  const known = options.find((option) => option.name === name);
  if (!known || !rawName.startsWith('--')) {
    const near = nearest(
      name,
      options.map((option) => option.name),
    );
    return fail({
      code: 'usage/unknown-option',
      option: rawName,
      nearest: near === null ? null : `--${near}`,
    });
  }
  if (known.takes === null) {
    return value === undefined ? succeed('') : fail({ code: 'usage/option-takes-none', option: rawName });
  }
  return value === undefined
    ? fail({ code: 'usage/option-needs-value', option: rawName, takes: known.takes })
    : succeed(value);
}

const usageWidth = 84;

/** As printed by `slantwise --help`. */
export function formatUsage(commands: readonly CliCommand[], words: Words): string {
  const { about, anywhere, withoutBrief, exitStatus } = words.cli;
  const lines = commands.flatMap((command) => [
    `  ${usageLine(command)}`,
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
      return cli.missing(optionUsage(fault.option), usageLine(fault.command));
    case 'usage/missing-operand':
      return cli.missing(fault.operand, usageLine(fault.command));
    case 'usage/too-many-operands':
      return cli.oneTooMany(fault.operand, usageLine(fault.command));
    case 'usage/not-a-choice':
      return cli.notAChoice(fault.operand, fault.choices);
    default:
      return exhaustive(fault);
  }
}
