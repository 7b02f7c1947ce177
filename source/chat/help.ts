/** Help: what fits what is on the screen now, by topic with lines to try, on one command, or all commands. */

import { currentStep, type Session } from '../session/session.ts';
import type { Way } from '../session/way.ts';
import { rowAt } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import { explainWord, findWord } from '../wording/explain.ts';
import { findNamed, type Named, titleOf } from '../wording/named.ts';
import type { Words } from '../wording/words.ts';
import { type ChatCommand, usageOf } from './commands/chat-command.ts';
import {
  chatCommands,
  exampleLines,
  findCommand,
  findExample,
  firstYarn,
  markExample,
  noteExample,
  weighExample,
} from './commands/chat-commands.ts';

export function formatHelp(topic: string | null, scene: Scene, words: Words): readonly string[] {
  const asked = topic?.trim().toLowerCase() ?? null;
  if (asked === null) return nowLines(scene, words);
  if (asked === 'all') return allLines(words);
  const exact = helpTopics.find((one) => one.id === asked || titleOf(one, words).toLowerCase() === asked);
  const command = findCommand(asked);
  if (exact) return [...topicLines(exact, scene, words), ...(command ? commandLines(command, words) : [])];
  if (command) return commandLines(command, words);
  const near = findNamed(helpTopics, asked, words);
  if (near) return topicLines(near, scene, words);
  return findWord(asked, words) ? explainWord(asked, words) : [words.help.none(asked), topicsLine(words)];
}

const nowLines = (scene: Scene, words: Words): readonly string[] => {
  const situation = situationOf(scene);
  const examples = examplesNow[situation](scene, words);
  return [words.help.now[situation], ...exampleLines(examples, words), words.help.keys, topicsLine(words)];
};

const topicsLine = (words: Words): string =>
  words.help.topicsAre(helpTopics.map((one) => titleOf(one, words)).join(', '));

const topicLines = ({ lines, examples }: HelpTopic, { session }: Scene, words: Words): readonly string[] => [
  ...lines(words),
  ...exampleLines(examples(session, words), words),
];

function commandLines(command: ChatCommand, words: Words): readonly string[] {
  const { name, example, aliases } = command;
  const also = aliases.length > 0 ? [words.help.alsoCalled(aliases.join(', '))] : [];
  return [
    `${usageOf(command, words)}: ${words.commands[name].summary}.`,
    [words.help.forExample(example), ...also].join(' '),
  ];
}

/** All commands in two columns, so that a window of 24 rows holds them. */
function allLines(words: Words): readonly string[] {
  const cells = chatCommands.map(({ name }) => `${name.padEnd(nameWidth)}${words.commands[name].gist}`);
  const rows = Math.ceil(cells.length / 2);
  const table = cells.slice(0, rows).map((cell, i) => `${cell.padEnd(cellWidth)}${cells[rows + i] ?? ''}`);
  return [...table, words.help.more];
}

const nameWidth = 9;
const cellWidth = 39;

interface HelpTopic extends Named {
  readonly id: keyof Words['help']['topics'];
  readonly lines: (words: Words) => readonly string[];
  /** Lines to type, in an order in which all of them work. */
  readonly examples: (session: Session, words: Words) => readonly string[];
}

const topic = (id: HelpTopic['id']): Omit<HelpTopic, 'examples'> => ({
  id,
  names: (words: Words) => words.help.topics[id].names,
  lines: (words: Words) => words.help.topics[id].lines,
});

export const helpTopics: readonly HelpTopic[] = [
  { ...topic('keys'), examples: () => ['next', 'back'] },
  { ...topic('switches'), examples: () => ['pedal gap 100', 'pause long', 'pedal confirm'] },
  { ...topic('find'), examples: (session) => ['where', findExample(session), 'find and carriage right'] },
  {
    ...topic('rip'),
    examples: ({ job, done }) => [
      'back',
      'redo',
      `rip row ${Math.max(1, rowAt(job, done))}`,
      'choose',
      'stop',
    ],
  },
  {
    ...topic('replan'),
    examples: () => ['replan 20 stitches 9.8 cm 30 rows 10.5 cm', 'replan longer', 'choose 1', 'back'],
  },
  {
    ...topic('yarn'),
    examples: (session) => [
      'plan',
      'why yarn',
      weighExample(session),
      `replan weigh ${firstYarn(session)} 20`,
    ],
  },
  {
    ...topic('log'),
    examples: (_, words) => [noteExample(words), 'notes', markExample(words), 'bags', 'save ../bag.jsonl'],
  },
  { ...topic('replay'), examples: () => ['bags'] },
  { ...topic('language'), examples: () => ['language auto', 'units cm'] },
  { ...topic('screen'), examples: () => ['draw strip', 'draw bed', 'large on', 'bell on', 'speech on'] },
];

/** What the maker is in the middle of. */
export interface Scene {
  readonly session: Session;
  readonly way: Way | null;
  /** What is wrong with saving; null while every press is on disk. */
  readonly trouble: string | null;
  /** Things that `take` would carry out. */
  readonly offers: number;
}

export type Situation = keyof Words['help']['now'];

/** The most pressing one comes first: unsaved work, then what is being guided or offered, then the step. */
export function situationOf({ session, way, trouble, offers }: Scene): Situation {
  if (trouble !== null) return 'trouble';
  if (way) return 'way';
  if (offers > 0) return 'offer';
  const step = currentStep(session);
  return step ? situationAt(step) : 'finished';
}

function situationAt({ phase, act }: Step): Situation {
  switch (act.kind) {
    case 'increase':
    case 'decrease':
      return 'shaping';
    case 'thread-eyelets':
    case 'tie':
      return 'threading';
    case 'set-needles-again':
    case 'rehang':
      return 'rehang';
    case 'weights-off':
    case 'take-off':
    case 'release-waste':
      return act.rehangs ? 'rehang' : phase;
    default:
      return phase;
  }
}

/** Lines that work here when typed. */
export const examplesNow: Readonly<Record<Situation, (scene: Scene, words: Words) => readonly string[]>> = {
  trouble: () => ['save ../bag.jsonl', 'help log', 'where', 'next'],
  way: () => ['next', 'back', 'again', 'stop'],
  offer: ({ offers }) => [offers === 1 ? 'choose' : 'choose 1', 'where', 'help find', 'next'],
  finished: ({ session }, words) => [weighExample(session), noteExample(words), 'notes', 'bags', 'quit'],
  'cast-on': () => ['next', 'plan', 'words ravel cord', 'pedal confirm', 'large on'],
  stripes: ({ session }, words) => [
    'next',
    'where',
    findExample(session),
    markExample(words),
    'why two rows',
  ],
  shaping: ({ session }) => ['next', 'words shaping move', 'why eyelets', 'draw bed', findExample(session)],
  rehang: () => ['next', 'words rehang', 'why rehang', 'draw bed'],
  'closing-row': () => ['next', 'why closing row', 'why tail', 'plan'],
  hem: () => ['next', 'words hem', 'why hem', 'draw bed'],
  graft: () => ['next', 'words movement', 'why graft', 'back', 'large on'],
  seam: () => ['next', 'words bar', 'why seam', 'draw fold'],
  cord: ({ session }) => [
    session.job.stepCount - session.done >= severalRounds ? `next ${severalRounds}` : 'next',
    'words slip',
    'why cord',
    'back',
  ],
  threading: () => ['next', 'why eyelets', 'draw bag', 'cautions'],
};

/** Rounds that are confirmed at once, once they are knitted. */
const severalRounds = 10;
