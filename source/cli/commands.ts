import { wrap } from '../chat/wording/page.ts';
import { say } from '../shared/say.ts';

/** What can be typed after `slantwise`, as a table: reading the arguments and printing the usage both come out of it. */
export interface CliOption {
  readonly name: string;
  /** What it takes; null for a plain switch. */
  readonly takes: string | null;
  readonly summary: () => string;
  /** The command cannot do without it. */
  readonly required?: true;
}

export interface CliCommand {
  readonly name: CliName;
  /** Arguments in order; one in brackets may be left out, and a last one with dots be there more than once. */
  readonly takes: readonly string[];
  /** What the argument may be, where that is a fixed choice. */
  readonly choices?: readonly string[];
  readonly summary: () => string;
  readonly options: readonly CliOption[];
}

export const shells = ['bash', 'zsh', 'fish'] as const;

export type CliName =
  | 'work'
  | 'new'
  | 'plan'
  | 'steps'
  | 'schema'
  | 'sheet'
  | 'replay'
  | 'lesson'
  | 'reckon'
  | 'check'
  | 'bags'
  | 'completion'
  | 'manual';

const json: CliOption = { name: 'json', takes: null, summary: () => say`print JSON and nothing else` };

const plain: CliOption = {
  name: 'plain',
  takes: null,
  summary: () => say`no screen: read lines, print lines`,
};

export const cliCommands: readonly CliCommand[] = [
  {
    name: 'work',
    takes: ['[BRIEF]'],
    summary: () => say`knit a bag step by step; go on where you left off (also without the word work)`,
    options: [
      { name: 'log', takes: 'FILE', summary: () => say`keep the log in this file` },
      {
        name: 'like',
        takes: 'LOG',
        summary: () => say`begin another bag like the one in this log, its changes and notes too`,
      },
      { name: 'new', takes: null, summary: () => say`start anew, even when this bag is on the go` },
      {
        name: 'practice',
        takes: null,
        summary: () => say`with nothing on the go begin the practice bag, and ask nothing`,
      },
      plain,
    ],
  },
  {
    name: 'new',
    takes: [],
    summary: () => say`answer a few questions, see the plan, and begin the bag`,
    options: [plain],
  },
  {
    name: 'plan',
    takes: ['BRIEF', '[BRIEF...]'],
    summary: () =>
      say`print the plan of a brief: size, yarn, needles, tails; of several, their yarn together too`,
    options: [
      json,
      {
        name: 'from-yarn',
        takes: null,
        summary: () => say`the largest bag of this shape that the weighed yarns allow`,
      },
    ],
  },
  { name: 'steps', takes: ['BRIEF'], summary: () => say`print every step of the job`, options: [json] },
  {
    name: 'sheet',
    takes: ['BRIEF'],
    summary: () => say`write a sheet to print: plan, drawings, a box to tick for each stripe`,
    options: [
      {
        name: 'out',
        takes: 'FILE',
        summary: () => say`a new file that ends in .html, .svg or .md`,
        required: true,
      },
      { name: 'class', takes: null, summary: () => say`with blanks for each pupil's own swatch` },
    ],
  },
  { name: 'schema', takes: [], summary: () => say`print the JSON Schema of a brief`, options: [] },
  {
    name: 'replay',
    takes: ['LOG'],
    summary: () => say`play a log again, at the pace at which it was worked; outside a terminal print it`,
    options: [{ name: 'speed', takes: 'TIMES', summary: () => say`times that pace, such as 4 or 0.5` }, json],
  },
  {
    name: 'lesson',
    takes: ['LOG', 'LINES'],
    summary: () => say`copy a log with a teacher's lines in it, such as: 33 say Watch the left edge`,
    options: [{ name: 'out', takes: 'COPY', summary: () => say`a new file for the copy`, required: true }],
  },
  {
    name: 'reckon',
    takes: ['LOG'],
    summary: () => say`the record of a bag: time, size, yarn, needles, dates, notes`,
    options: [json],
  },
  {
    name: 'check',
    takes: ['LOG'],
    summary: () => say`check that a log is sound, and count what is in it`,
    options: [json],
  },
  { name: 'bags', takes: [], summary: () => say`list the bags on the go and finished`, options: [json] },
  {
    name: 'completion',
    takes: ['SHELL'],
    choices: shells,
    summary: () => say`print what lets the Tab key of bash, zsh or fish complete these words`,
    options: [],
  },
  { name: 'manual', takes: [], summary: () => say`print the manual page, for man -l -`, options: [] },
];

export const usageOf = (command: CliCommand): string =>
  ['slantwise', command.name, ...command.takes, ...command.options.map(optionUsage)].join(' ');

/** `--out FILE`. */
export const flagOf = ({ name, takes }: CliOption): string => `--${name}${takes === null ? '' : ` ${takes}`}`;

/** The flag, in brackets where it may be left out. */
export const optionUsage = (option: CliOption): string =>
  option.required ? flagOf(option) : `[${flagOf(option)}]`;

const usageWidth = 84;

/** The whole usage, as printed by `slantwise --help`. */
export function formatUsage(): string {
  const lines = cliCommands.flatMap((command) => [
    `  ${usageOf(command)}`,
    `      ${command.summary()}`,
    ...command.options.map((option) => `      ${flagOf(option).padEnd(16)}${option.summary()}`),
  ]);
  return [
    ...wrap(
      say`Slantwise plans a bias-striped drawstring bag for a hand-operated flat-bed knitting machine, guides you one step at a time, and keeps the count.`,
      usageWidth,
    ),
    '',
    ...lines,
    '',
    ['  slantwise --help', 'slantwise --version'].join(', '),
    '',
    say`Without BRIEF it goes on with the bag in hand. Where there is none it asks for one.`,
    say`Exit status: 0 done, 1 the input was wrong, 2 wrong usage, 130 interrupted.`,
  ].join('\n');
}
