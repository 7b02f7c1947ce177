/** The arguments of the program against its table of commands, read into tokens by Node's own parser. */

import { parseArgs } from 'node:util';
import { describe, expect, it } from 'vitest';
import { faultIn } from '../../test/tools/result.ts';
import { englishWords } from '../wording/words.ts';
import { commands } from './commands.ts';
import { formatUsageFault, parseArguments } from './parse-arguments.ts';

const options = Object.fromEntries(
  commands
    .flatMap((command) => command.options)
    .map(({ name, takes }) => [name, { type: takes === null ? ('boolean' as const) : ('string' as const) }]),
);

const read = (line: string) =>
  parseArguments(
    parseArgs({
      args: line.split(' ').filter((word) => word !== ''),
      options,
      strict: false,
      allowPositionals: true,
      tokens: true,
    }).tokens,
    commands,
  );

describe('arguments', () => {
  it.each([
    ['', 'work', [], {}],
    ['bag.json --plain', 'work', ['bag.json'], { plain: '' }],
    ['work bag.json --log bag.jsonl', 'work', ['bag.json'], { log: 'bag.jsonl' }],
    ['sheet bag.json --out=bag.html', 'sheet', ['bag.json'], { out: 'bag.html' }],
    ['completion zsh', 'completion', ['zsh'], {}],
  ])('%s', (line, name, operands, given) => {
    expect(read(line)).toMatchObject({
      ok: true,
      value: { kind: 'run', command: { name }, operands, given: new Map(Object.entries(given)) },
    });
  });

  it.each([
    ['--help', 'help'],
    ['plan -h', 'help'],
    ['--version', 'version'],
  ])('%s', (line, kind) => expect(read(line)).toEqual({ ok: true, value: { kind } }));

  it.each([
    ['plan bag.json --jsno', 'usage/unknown-option', 'There is no option --jsno here. Did you mean --json?'],
    ['plna bag.json', 'usage/unknown-command', 'There is no command plna. Did you mean plan?'],
    ['sheet bag.json --out', 'usage/option-needs-value', '--out needs a value: --out FILE'],
    [
      'plan bag.json --json=yes',
      'usage/option-takes-none',
      '--json takes no value: leave out what follows the equals sign',
    ],
    [
      'sheet bag.json',
      'usage/missing-option',
      '--out FILE is missing. Usage: slantwise sheet BRIEF [BRIEF...] --out FILE [--class] [--paper PAPER] [--tag] [--fibre TEXT] [--care TEXT]',
    ],
    [
      'plan',
      'usage/missing-operand',
      'BRIEF is missing. Usage: slantwise plan BRIEF [BRIEF...] [--json] [--from-yarn] [--colours-turned]',
    ],
    [
      'steps a.json b.json',
      'usage/too-many-operands',
      'b.json is one too many. Usage: slantwise steps BRIEF [--json]',
    ],
    ['completion csh', 'usage/not-a-choice', 'csh does not fit here: write bash, zsh or fish'],
  ])('%s is refused in one sentence', (line, code, sentence) => {
    const fault = faultIn(read(line));
    expect(fault.code).toBe(code);
    expect(formatUsageFault(fault, englishWords)).toBe(sentence);
  });
});
