/** What is printed outside the bench: the usage, the manual page, what is wrong with the arguments, and how a run ends. */
import type { Amounts } from './amounts.ts';

export const cli = ({ choice, decimal }: Amounts) => ({
  /** What each word of the command line does; an option's words stand with its command, or by themselves if several have it. */
  does: {
    work: 'knit a bag step by step; go on with the bag in progress (also without the word work)',
    log: 'keep the log in this file',
    like: 'start another bag like the one in this log, with its changes and notes',
    fresh: 'start over, even if this bag is in progress',
    practice: 'with no bag in progress, start the practice bag without asking',
    plain: 'plain text, line by line, for screen readers and pipes',
    new: 'answer a few questions, see the plan, and begin the bag',
    plan: 'print the plan of a brief: size, yarn, needles, tails; of several, their yarn together too',
    json: 'print JSON and nothing else',
    fromYarn: 'the largest bag of this shape that the weighed yarns allow',
    steps: 'print every step of the job',
    sheet: 'write a sheet to print: plan, drawings, a box to tick for each stripe',
    out: 'a new file that ends in .html, .svg or .md',
    paper: 'for .svg: the paper of its pages, a4 (as without) or letter',
    tag: 'a gift tag to cut out, in place of the sheet',
    fibre: 'for the tag: what it is knitted of, in your words',
    care: 'for the tag: how it is washed, in your words',
    class: "with blanks for each pupil's own swatch",
    schema: 'print the JSON Schema of a brief',
    replay: 'play a log back as fast as it was worked; outside a terminal print it',
    speed: 'speed, such as 4 or 0.5',
    lesson: "copy a log with a teacher's lines in it, such as: 33 say Watch the left edge",
    copy: 'a new file for the copy',
    pupils: 'how a class stands, by the logs of its pupils in a folder',
    record: 'the record of a bag: time, size, yarn, needles, dates, notes',
    check: 'check a log for damage and count its entries',
    open: 'go on with a bag, by its number in bags or by its name',
    rename: 'call a bag something else',
    discard: 'throw a bag away, by its number in bags or by its name; a copy is kept until the next one',
    yes: 'do not ask first',
    restore: 'bring back the bag that was thrown away last',
    bags: 'list your bags, in progress and finished',
    completion: 'print a Tab-completion script for bash, zsh or fish',
    manual: 'print the manual page, for man -l -',
  },
  about:
    'Slantwise plans a bias-striped drawstring bag for a hand-operated flat-bed knitting machine, guides you one step at a time, and keeps the count.',
  anywhere: 'slantwise --help, slantwise --version',
  withoutBrief:
    'Without BRIEF it goes on with the bag in progress. With none in progress it asks you to plan one.',
  exitStatus:
    'Exit status: 0 done, 1 the input was wrong, 2 wrong usage, 70 a bug of its own, 130 interrupted.',

  noOption: (option: string) => `There is no option ${option} here; slantwise --help shows them`,
  noOptionBut: (option: string, near: string) => `There is no option ${option} here. Did you mean ${near}?`,
  noCommand: (word: string) => `There is no command ${word}; slantwise --help shows them`,
  noCommandBut: (word: string, near: string) => `There is no command ${word}. Did you mean ${near}?`,
  noFileBut: (word: string, near: string) => `There is no file or command ${word}. Did you mean ${near}?`,
  needsValue: (option: string, takes: string) => `${option} needs a value: ${option} ${takes}`,
  takesNoValue: (option: string) => `${option} takes no value: leave out what follows the equals sign`,
  missing: (what: string, usage: string) => `${what} is missing. Usage: ${usage}`,
  oneTooMany: (what: string, usage: string) => `${what} is one too many. Usage: ${usage}`,
  notAChoice: (word: string, choices: readonly string[]) =>
    `${word} does not fit here: write ${choice(choices)}`,
  forOneBag: (option: string) => `--${option} is for one bag: name one brief, or leave it out`,
  notAPaper: (typed: string, papers: readonly string[]) =>
    `--paper ${typed} is not a paper known here: write ${choice(papers)}`,
  notASpeed: (typed: string, slowest: number, fastest: number) =>
    `--speed ${typed} is not a number from ${decimal(slowest)} to ${fastest}`,

  endlessLine: 'A line of more than 1,000 KiB came in, and reading stopped there. Send one command a line.',
  unwritten: (code: string) => `The output could not be written (${code}). Make room, or print elsewhere.`,
  ourFault: (what: string, where: string) =>
    `Slantwise has a bug (${what}). What you confirmed is kept in ${where}: start it again to go on, and report this sentence with the log to whoever gave you the program.`,

  manual: {
    name: 'Name',
    whatItIs: 'plans and guides the knitting of a bias-striped drawstring bag',
    synopsis: 'Synopsis',
    description: 'Description',
    descriptions: [
      'Slantwise plans a drawstring bag of slanting stripes for a hand-operated flat-bed knitting machine, guides you one step at a time and keeps the count.',
      'Without a brief it goes on with the bag in progress. Each confirmed step is on disk before it is shown.',
    ],
    commands: 'Commands',
    keys: 'Keys',
    enterSpace: 'Enter, Space',
    confirms: 'confirm the step',
    leftArrow: '←',
    takesBack: 'take the last step back',
    upDownTab: 'Up, Down, Tab',
    bringsBack: 'bring back what was typed, complete a word',
    largeLetters: 'show large letters',
    leaves: 'quit; everything is saved',
    environment: 'Environment',
    logInstead: 'the log to work in, as with --log',
    languageOfSystem: 'the language, where the setting is auto: en or de',
    noColour: 'draw without colour',
    whereKept: 'where logs and settings are kept on Linux',
    brief: 'Fields of a brief',
    files: 'Files',
    filesKept:
      'Logs, one to a bag, are JSON Lines in the folder bags of the data folder that the system gives to programs; settings.json is in its folder for settings.',
    exitStatus: 'Exit status',
    exitStatuses: '0 done, 1 the input was wrong, 2 wrong usage, 70 a bug of its own, 130 interrupted.',
    examples: 'Examples',
    exampleNew: 'answer a few questions and begin',
    examplePlan: 'print the plan of a brief',
    exampleSheet: 'write a sheet to print',
    exampleReplay: 'play a log back, eight times as fast',
  },
});

export type CliWords = ReturnType<typeof cli>;
