/** Reads the arguments and runs what they ask for; each command is loaded only when it is wanted. */
import { parseArgs } from 'node:util';
import { cliCommands, formatUsage } from './cli/commands.ts';
import { complain, exitCodes, isTerminal, quietOnClosedPipe, sayOurFault } from './cli/outcome.ts';
import { type Arguments, type ArgumentToken, parseArguments } from './cli/parse-arguments.ts';
import { complainOfSettings, settle } from './cli/settings.ts';
import type { Shell } from './cli/shell-completion.ts';
import { formatUsageFault } from './cli/usage-faults.ts';
import { logFolder } from './files/data-folders.ts';
import type { LoadedSettings } from './files/settings-file.ts';
import { unitsFor } from './shared/units.ts';

declare const SLANTWISE_VERSION: string;

type Run = Extract<Arguments, { readonly kind: 'run' }>;

async function main(): Promise<number> {
  quietOnClosedPipe();
  const tokens = tokensOf(process.argv.slice(2));
  const read = parseArguments(tokens);
  if (read.ok && read.value.kind === 'version') return print(SLANTWISE_VERSION);
  const settings = await settle(tokens.some((token) => token.kind === 'option' && token.name === 'json'));
  // The bench tells it among its own lines.
  if (!opensBench(read)) await complainOfSettings(settings);
  if (!read.ok) return complain(formatUsageFault(read.fault), exitCodes.usage);
  if (read.value.kind !== 'run') return print(formatUsage());
  return run(read.value, settings);
}

const opensBench = (read: ReturnType<typeof parseArguments>): boolean =>
  read.ok && read.value.kind === 'run' && (read.value.name === 'work' || read.value.name === 'new');

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

async function run({ name, operands, given }: Run, settings: LoadedSettings): Promise<number> {
  const [file = ''] = operands;
  const json = given.has('json');
  const units = unitsFor(settings.settings.units);
  switch (name) {
    case 'work':
      return (await import('./cli/sit-down.ts')).sitDown({
        brief: operands[0] ?? null,
        log: given.get('log'),
        like: given.get('like'),
        anew: given.has('new'),
        mayAsk: !given.has('practice') && isTerminal(),
        asksFirst: false,
        plain: given.has('plain'),
        settings,
        program: SLANTWISE_VERSION,
      });
    case 'new':
      return (await import('./cli/sit-down.ts')).sitDown({
        brief: null,
        log: undefined,
        like: undefined,
        anew: true,
        mayAsk: true,
        asksFirst: true,
        plain: given.has('plain'),
        settings,
        program: SLANTWISE_VERSION,
      });
    case 'plan':
      return (await import('./cli/plan.ts')).printPlan(operands, {
        json,
        fromYarn: given.has('from-yarn'),
        units,
      });
    case 'steps':
      return (await import('./cli/plan.ts')).printSteps(file, json, units);
    case 'sheet':
      return (await import('./cli/sheet.ts')).writeSheet(file, {
        out: given.get('out') ?? '',
        forClass: given.has('class'),
        units,
      });
    case 'schema':
      return (await import('./cli/documents.ts')).printSchema();
    case 'replay':
      return (await import('./cli/replay.ts')).replay(file, { json, speed: given.get('speed'), units });
    case 'lesson':
      return (await import('./cli/lesson.ts')).writeLesson(file, operands[1] ?? '', given.get('out') ?? '');
    case 'reckon':
      return (await import('./cli/reckon.ts')).printRecord(file, json, units);
    case 'check':
      return (await import('./cli/logs.ts')).check(file, json);
    case 'bags':
      return (await import('./cli/logs.ts')).listBags(json);
    case 'completion':
      return (await import('./cli/documents.ts')).printCompletion(file as Shell);
    case 'manual':
      return (await import('./cli/documents.ts')).printManual(SLANTWISE_VERSION);
  }
}

/** Whatever is thrown is a fault of ours: one sentence, and never the program's own text. */
function endByOurFault(error: unknown): void {
  process.exitCode = complain(sayOurFault(error, logFolder()), exitCodes.ourFault);
}

process.on('uncaughtException', (error) => {
  endByOurFault(error);
  process.exit();
});
main().then((code) => {
  process.exitCode = code;
}, endByOurFault);
