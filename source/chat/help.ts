/** Help: what fits what is on the screen now, by topic with lines to try, on one command, or all commands. */

import type { Session } from '../session/session.ts';
import { rowAt } from '../steps/job.ts';
import { explainWord, findWord } from '../wording/explain.ts';
import type { HelpWords } from '../wording/help.en.ts';
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
import { helpNow, type Scene, situationOf } from './situation.ts';

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
  const { says, examples } = helpNow[situationOf(scene)];
  return [says(words), ...exampleLines(examples(scene, words), words), words.help.keys, topicsLine(words)];
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
  readonly id: keyof HelpWords['topics'];
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
