/**
 * What helps from outside: the manual page, in the macros of man(7), whose commands come out of their table; and scripts for the
 * Tab key of a shell.
 */

import { today } from '../files/clock.ts';
import type { Words } from '../wording/words.ts';
import { type Asked, type CliCommand, type CliOption, flagOf, optionUsage } from './command.ts';
import { printDone } from './outcome.ts';
import { completionScript, type Shell } from './shell-completion.ts';

interface ManualFacts {
  readonly version: string;
  /** `2026-11-25`. */
  readonly date: string;
}

export function formatManual(
  commands: readonly CliCommand[],
  words: Words,
  { version, date }: ManualFacts,
): string {
  const { manual } = words.cli;
  const list = (rows: readonly (readonly [string, string])[]): readonly string[] =>
    rows.flatMap(([name, meaning]) => tagged(name, meaning));
  return [
    `.TH SLANTWISE 1 ${date} ${quoted(`Slantwise ${version}`)}`,
    ...section(manual.name, [`slantwise \\- ${escaped(manual.whatItIs)}`]),
    ...section(manual.synopsis, commands.flatMap(synopsis)),
    ...section(manual.description, paragraphs(manual.descriptions)),
    ...section(
      manual.commands,
      commands.flatMap((command) => commandLines(command, words)),
    ),
    ...section(manual.keys, list(keys(words))),
    ...section(manual.environment, list(environment(words))),
    ...section(manual.brief, list(Object.entries(words.fields).filter(([field]) => field !== 'brief'))),
    ...section(manual.files, paragraphs([manual.filesKept])),
    ...section(manual.exitStatus, paragraphs([manual.exitStatuses])),
    ...section(manual.examples, list(examples(words))),
  ].join('\n');
}

const keys = ({ cli: { manual } }: Words): readonly (readonly [string, string])[] => [
  [manual.enterSpace, manual.confirms],
  [manual.leftArrow, manual.takesBack],
  [manual.upDownTab, manual.bringsBack],
  ['F2', manual.largeLetters],
  ['Ctrl-C', manual.leaves],
];

const environment = ({ cli: { manual } }: Words): readonly (readonly [string, string])[] => [
  ['SLANTWISE_LOG', manual.logInstead],
  ['LC_ALL, LC_MESSAGES, LANG', manual.languageOfSystem],
  ['NO_COLOR', manual.noColour],
  ['XDG_DATA_HOME, XDG_CONFIG_HOME', manual.whereKept],
];

const examples = ({ cli: { manual } }: Words): readonly (readonly [string, string])[] => [
  ['slantwise new', manual.exampleNew],
  ['slantwise plan bag.json', manual.examplePlan],
  ['slantwise sheet bag.json --out bag.html', manual.exampleSheet],
  ['slantwise replay bag.jsonl --speed 8', manual.exampleReplay],
];

const section = (title: string, lines: readonly string[]): readonly string[] => [
  `.SH ${quoted(title.toUpperCase())}`,
  ...lines,
];

const paragraphs = (texts: readonly string[]): readonly string[] =>
  texts.flatMap((text, i) => (i === 0 ? [line(text)] : ['.PP', line(text)]));

const tagged = (tag: string, text: string): readonly string[] => ['.TP', `.B ${line(tag)}`, line(text)];

function synopsis({ name, takes, options }: CliCommand): readonly string[] {
  const given = [...takes, ...options.map(optionUsage)];
  return [`.B slantwise ${name}`, line(given.join(' ')), '.br'].filter((text) => text !== '');
}

const commandLines = (command: CliCommand, words: Words): readonly string[] => [
  '.TP',
  `.B ${command.name}`,
  line(command.summary(words)),
  ...(command.options.length === 0
    ? []
    : ['.RS', ...command.options.flatMap((option) => optionLines(option, words)), '.RE']),
];

const optionLines = (option: CliOption, words: Words): readonly string[] =>
  tagged(flagOf(option), option.summary(words));

/** A backslash and a hyphen mean something to man(7), and so do a point or an apostrophe that begin a line. */
const escaped = (text: string): string =>
  text.replaceAll('\\', '\\e').replaceAll('-', '\\-').replaceAll('←', '\\(<-');
const line = (text: string): string => escaped(text).replace(/^[.']/, '\\&$&');
const quoted = (text: string): string => `"${escaped(text).replaceAll('"', '\\(dq')}"`;

export const printCompletion = ({ commands, words }: Asked, shell: Shell): number =>
  printDone(completionScript(shell, commands, words));

export const printManual = ({ commands, words, program }: Asked): number =>
  printDone(formatManual(commands, words, { version: program, date: today() }));
