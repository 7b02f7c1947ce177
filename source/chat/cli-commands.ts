/** What can be typed after `slantwise`, as a table: reading the arguments and printing the usage both come out of it. */
export interface CliOption {
  readonly name: string;
  /** What it takes; null for a plain switch. */
  readonly takes: string | null;
  readonly summary: string;
  /** The command cannot do without it. */
  readonly required?: true;
}

export interface CliCommand {
  readonly name: CliName;
  /** Arguments in order; one in brackets may be left out. */
  readonly takes: readonly string[];
  readonly summary: string;
  readonly options: readonly CliOption[];
}

export type CliName =
  | 'work'
  | 'plan'
  | 'steps'
  | 'schema'
  | 'sheet'
  | 'replay'
  | 'lesson'
  | 'reckon'
  | 'check'
  | 'bags';

const json: CliOption = { name: 'json', takes: null, summary: 'print JSON and nothing else' };

export const cliCommands: readonly CliCommand[] = [
  {
    name: 'work',
    takes: ['[BRIEF]'],
    summary: 'knit a bag step by step; go on where you left off (also without the word work)',
    options: [
      { name: 'log', takes: 'FILE', summary: 'keep the log in this file' },
      {
        name: 'like',
        takes: 'LOG',
        summary: 'begin another bag like the one in this log, its changes and notes too',
      },
      { name: 'new', takes: null, summary: 'start anew, even when this bag is on the go' },
      { name: 'plain', takes: null, summary: 'no screen: read lines, print lines' },
    ],
  },
  {
    name: 'plan',
    takes: ['BRIEF'],
    summary: 'print the plan of a brief: size, yarn, needles, tails',
    options: [
      json,
      {
        name: 'from-yarn',
        takes: null,
        summary: 'the largest bag of this shape that the weighed yarns allow',
      },
    ],
  },
  { name: 'steps', takes: ['BRIEF'], summary: 'print every step of the job', options: [json] },
  {
    name: 'sheet',
    takes: ['BRIEF'],
    summary: 'write a sheet to print: plan, drawings, a box to tick for each stripe',
    options: [
      {
        name: 'out',
        takes: 'FILE',
        summary: 'a new file that ends in .html, .svg or .md',
        required: true,
      },
      { name: 'class', takes: null, summary: "with blanks for each pupil's own swatch" },
    ],
  },
  { name: 'schema', takes: [], summary: 'print the JSON Schema of a brief', options: [] },
  {
    name: 'replay',
    takes: ['LOG'],
    summary: 'play a log again, at the pace at which it was worked; outside a terminal print it',
    options: [{ name: 'speed', takes: 'TIMES', summary: 'times that pace, such as 4 or 0.5' }, json],
  },
  {
    name: 'lesson',
    takes: ['LOG', 'LINES'],
    summary: "copy a log with a teacher's lines in it, such as: 33 say Watch the left edge",
    options: [{ name: 'out', takes: 'COPY', summary: 'a new file for the copy', required: true }],
  },
  {
    name: 'reckon',
    takes: ['LOG'],
    summary: 'the record of a bag: time, size, yarn, needles, dates, notes',
    options: [json],
  },
  {
    name: 'check',
    takes: ['LOG'],
    summary: 'check that a log is sound, and count what is in it',
    options: [json],
  },
  { name: 'bags', takes: [], summary: 'list the bags on the go and finished', options: [json] },
];

export const usageOf = (command: CliCommand): string =>
  ['slantwise', command.name, ...command.takes, ...command.options.map(optionUsage)].join(' ');

export function optionUsage({ name, takes, required }: CliOption): string {
  const usage = `--${name}${takes ? ` ${takes}` : ''}`;
  return required ? usage : `[${usage}]`;
}

/** The whole usage, as printed by `slantwise --help`. */
export function formatUsage(): string {
  const lines = cliCommands.flatMap((command) => [
    `  ${usageOf(command)}`,
    `      ${command.summary}`,
    ...command.options.map(
      (option) =>
        `      ${`--${option.name}${option.takes ? ` ${option.takes}` : ''}`.padEnd(16)}${option.summary}`,
    ),
  ]);
  return [
    'Slantwise plans a bias-striped drawstring bag for a hand-operated flat-bed knitting',
    'machine, guides you one step at a time, and keeps the count.',
    '',
    ...lines,
    '',
    '  slantwise --help, slantwise --version',
    '',
    'Without BRIEF it goes on with the bag in hand, or begins the practice dice bag.',
    'Exit status: 0 done, 1 the input was wrong, 2 wrong usage, 130 interrupted.',
  ].join('\n');
}
