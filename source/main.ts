/** Reads the arguments and runs the row of the command line's table that they name. */
import { parseArgs } from 'node:util';
import type { CliCommand } from './cli/command.ts';
import { commands } from './cli/commands.ts';
import {
  complain,
  deafToDebuggers,
  endByOurFault,
  exitCodes,
  printDone,
  quietOnClosedPipe,
} from './cli/outcome.ts';
import { type ArgumentToken, formatUsage, formatUsageFault, parseArguments } from './cli/parse-arguments.ts';
import { complainOfSettings, settle } from './cli/settings.ts';
import { englishWords, type Words } from './wording/words.ts';

declare const SLANTWISE_VERSION: string;

async function run(settled: (words: Words) => void): Promise<number> {
  const tokens = tokensOf(process.argv.slice(2));
  const read = parseArguments(tokens, commands);
  if (read.ok && read.value.kind === 'version') return printDone(SLANTWISE_VERSION);
  const { settings, words } = await settle(
    tokens.some((token) => token.kind === 'option' && token.name === 'json'),
  );
  settled(words);
  const asked = read.ok && read.value.kind === 'run' ? read.value : null;
  if (!asked?.command.saysSettings) complainOfSettings(settings, words);
  if (!read.ok) return complain(formatUsageFault(read.fault, words), exitCodes.usage);
  if (asked === null) return printDone(formatUsage(commands, words));
  return asked.command.run({ ...asked, settings, words, program: SLANTWISE_VERSION, commands });
}

/** Node's parser needs to know which options take a value; what may be used where is checked by ours. */
function tokensOf(args: readonly string[]): readonly ArgumentToken[] {
  const typeOf = ({ takes }: CliCommand['options'][number]): 'boolean' | 'string' =>
    takes === null ? 'boolean' : 'string';
  const options = Object.fromEntries(
    commands.flatMap((command) => command.options).map((option) => [option.name, { type: typeOf(option) }]),
  );
  return parseArgs({ args: [...args], options, strict: false, allowPositionals: true, tokens: true }).tokens;
}

/** Whatever fails before the settings are read is told in English. */
function main(): void {
  let words = englishWords;
  const end = endByOurFault(() => words);
  deafToDebuggers();
  quietOnClosedPipe(() => words);
  process.on('uncaughtException', end);
  run((settled) => {
    words = settled;
  }).then((code) => {
    process.exitCode = code;
  }, end);
}

main();
