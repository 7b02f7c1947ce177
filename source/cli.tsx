#!/usr/bin/env node
/** Reads the arguments and runs what they ask for; each command is loaded only when it is wanted. */
import { parseArgs } from 'node:util';
import { cliCommands, formatUsage } from './chat/cli-commands.ts';
import { type Arguments, type ArgumentToken, parseArguments } from './chat/parse-arguments.ts';
import { formatUsageFault } from './chat/wording/usage-faults.ts';
import { complain, exitCodes, quietOnClosedPipe } from './cli/outcome.ts';

declare const SLANTWISE_VERSION: string;

type Run = Extract<Arguments, { readonly kind: 'run' }>;

async function main(): Promise<number> {
  quietOnClosedPipe();
  const read = parseArguments(tokensOf(process.argv.slice(2)));
  if (!read.ok) return complain(formatUsageFault(read.fault), exitCodes.usage);
  if (read.value.kind === 'help') return print(formatUsage());
  if (read.value.kind === 'version') return print(SLANTWISE_VERSION);
  return run(read.value);
}

/** Node's parser needs to know which options take a value; what may be used where is checked by ours. */
function tokensOf(args: readonly string[]): readonly ArgumentToken[] {
  const options = Object.fromEntries(
    cliCommands
      .flatMap((command) => command.options)
      .map(({ name, takes }) => [
        name,
        { type: takes === null ? ('boolean' as const) : ('string' as const) },
      ]),
  );
  const { tokens } = parseArgs({
    args: [...args],
    options,
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  return tokens;
}

function print(text: string): number {
  process.stdout.write(`${text}\n`);
  return exitCodes.done;
}

async function run({ name, operands, given }: Run): Promise<number> {
  const [file = ''] = operands;
  const json = given.has('json');
  switch (name) {
    case 'work':
      return (await import('./cli/work.ts')).work({
        brief: operands[0] ?? null,
        log: given.get('log'),
        like: given.get('like'),
        anew: given.has('new'),
        plain: given.has('plain'),
        program: SLANTWISE_VERSION,
      });
    case 'plan':
      return (await import('./cli/plan.ts')).printPlan(file, { json, fromYarn: given.has('from-yarn') });
    case 'steps':
      return (await import('./cli/plan.ts')).printSteps(file, json);
    case 'sheet':
      return (await import('./cli/sheet.ts')).writeSheet(file, {
        out: given.get('out') ?? '',
        forClass: given.has('class'),
      });
    case 'schema':
      return (await import('./cli/schema.ts')).printSchema();
    case 'replay':
      return (await import('./cli/replay.ts')).replay(file, { json, speed: given.get('speed') });
    case 'lesson':
      return (await import('./cli/lesson.ts')).writeLesson(file, operands[1] ?? '', given.get('out') ?? '');
    case 'reckon':
      return (await import('./cli/reckon.ts')).printRecord(file, json);
    case 'check':
      return (await import('./cli/logs.ts')).check(file, json);
    case 'bags':
      return (await import('./cli/logs.ts')).listBags(json);
  }
}

process.exitCode = await main();
