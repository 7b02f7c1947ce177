/** Help: what fits what is on the screen now, by topic, on one command, or all commands. */
import type { Words } from '../../wording/words.ts';
import { chatCommands, findCommand } from '../chat-commands.ts';
import type { ChatCommand } from '../commands/chat-command.ts';
import { findNamed, titleOf } from '../named.ts';
import { type Scene, situationOf } from '../situation.ts';
import { findWord } from '../words.ts';
import { explainWord } from './explain.ts';
import { exampleLines } from './help-examples.ts';
import { helpNow } from './help-now.ts';
import { type HelpTopic, helpTopics } from './help-topics.ts';

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

function commandLines({ usage, summary, example, aliases }: ChatCommand, words: Words): readonly string[] {
  const also = aliases.length > 0 ? [words.help.alsoCalled(aliases.join(', '))] : [];
  return [`${usage(words)}: ${summary(words)}.`, [words.help.forExample(example), ...also].join(' ')];
}

/** All commands in two columns, so that a window of 24 rows holds them. */
function allLines(words: Words): readonly string[] {
  const cells = chatCommands.map(({ name, gist }) => `${name.padEnd(nameWidth)}${gist(words)}`);
  const rows = Math.ceil(cells.length / 2);
  const table = cells.slice(0, rows).map((cell, i) => `${cell.padEnd(cellWidth)}${cells[rows + i] ?? ''}`);
  return [...table, words.help.more];
}

const nameWidth = 9;
const cellWidth = 39;
