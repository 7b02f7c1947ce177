/** The manual page, in the macros of man(7): commands come out of their table, the rest is said here. */
import { say } from '../shared/say.ts';
import { type CliCommand, type CliOption, cliCommands, flagOf, optionUsage } from './commands.ts';

interface ManualFacts {
  readonly version: string;
  /** `2026-11-25`. */
  readonly date: string;
}

export function formatManual({ version, date }: ManualFacts): string {
  return [
    `.TH SLANTWISE 1 ${date} ${quoted(`Slantwise ${version}`)}`,
    ...section(say`Name`, [
      `slantwise \\- ${escaped(say`plans and guides the knitting of a bias-striped drawstring bag`)}`,
    ]),
    ...section(say`Synopsis`, cliCommands.flatMap(synopsis)),
    ...section(say`Description`, paragraphs(description())),
    ...section(say`Commands`, cliCommands.flatMap(commandLines)),
    ...section(
      say`Keys`,
      keys().flatMap(([key, meaning]) => tagged(key, meaning)),
    ),
    ...section(
      say`Environment`,
      environment().flatMap(([name, meaning]) => tagged(name, meaning)),
    ),
    ...section(say`Files`, paragraphs(files())),
    ...section(
      say`Exit status`,
      paragraphs([say`0 done, 1 the input was wrong, 2 wrong usage, 130 interrupted.`]),
    ),
    ...section(
      say`Examples`,
      examples().flatMap(([line, meaning]) => tagged(line, meaning)),
    ),
  ].join('\n');
}

const description = (): readonly string[] => [
  say`Slantwise plans a drawstring bag of slanting stripes for a hand-operated flat-bed knitting machine, guides you one step at a time and keeps the count.`,
  say`Without a brief it goes on with the bag in hand. Each confirmed step is on disk before it is shown.`,
];

const keys = (): readonly (readonly [string, string])[] => [
  [say`Enter, Space`, say`confirm the step`],
  [say`Left arrow`, say`take the last step back`],
  [say`Up, Down, Tab`, say`bring back what was typed, complete a word`],
  ['F2', say`show large letters`],
  ['Ctrl-C', say`leave; everything is saved`],
];

const environment = (): readonly (readonly [string, string])[] => [
  ['SLANTWISE_LOG', say`the log to work in, as with --log`],
  ['LC_ALL, LC_MESSAGES, LANG', say`the language, where the setting is auto: en or de`],
  ['NO_COLOR', say`draw without colour`],
  ['XDG_DATA_HOME, XDG_CONFIG_HOME', say`where logs and settings are kept on Linux`],
];

const files = (): readonly string[] => [
  say`Logs, one to a bag, are JSON Lines in the folder bags of the data folder that the system gives to programs; settings.json is in its folder for settings.`,
];

const examples = (): readonly (readonly [string, string])[] => [
  ['slantwise new', say`answer a few questions and begin`],
  ['slantwise plan bag.json', say`print the plan of a brief`],
  ['slantwise sheet bag.json --out bag.html', say`write a sheet to print`],
  ['slantwise replay bag.jsonl --speed 8', say`play a log again, eight times as fast`],
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

const commandLines = (command: CliCommand): readonly string[] => [
  '.TP',
  `.B ${command.name}`,
  line(command.summary()),
  ...(command.options.length === 0 ? [] : ['.RS', ...command.options.flatMap(optionLines), '.RE']),
];

const optionLines = (option: CliOption): readonly string[] => tagged(flagOf(option), option.summary());

/** A backslash and a hyphen mean something to man(7), and so do a point or an apostrophe that begin a line. */
const escaped = (text: string): string => text.replaceAll('\\', '\\e').replaceAll('-', '\\-');
const line = (text: string): string => escaped(text).replace(/^[.']/, '\\&$&');
const quoted = (text: string): string => `"${escaped(text).replaceAll('"', '\\(dq')}"`;
