/** Help: what fits what is on the screen now, by topic, on one command, or all commands. */
import { say } from '../../shared/say.ts';
import { chatCommands, findCommand } from '../chat-commands.ts';
import type { ChatCommand } from '../commands/chat-command.ts';
import { findNamed, titleOf } from '../named.ts';
import { type Scene, situationOf } from '../situation.ts';
import { findWord } from '../words.ts';
import { explainWord } from './explain.ts';
import { exampleLines } from './help-examples.ts';
import { helpNow } from './help-now.ts';
import { type HelpTopic, helpTopics } from './help-topics.ts';

export function formatHelp(topic: string | null, scene: Scene): readonly string[] {
  const asked = topic?.trim().toLowerCase() ?? null;
  if (asked === null) return nowLines(scene);
  if (asked === 'all') return allLines();
  const exact = helpTopics.find((one) => one.id === asked || titleOf(one).toLowerCase() === asked);
  const command = findCommand(asked);
  if (exact) return [...topicLines(exact, scene), ...(command ? commandLines(command) : [])];
  if (command) return commandLines(command);
  const near = findNamed(helpTopics, asked);
  if (near) return topicLines(near, scene);
  return findWord(asked) ? explainWord(asked) : [say`There is no help on ${asked}.`, topicsLine()];
}

const nowLines = (scene: Scene): readonly string[] => {
  const { says, examples } = helpNow[situationOf(scene)];
  return [
    says(),
    ...exampleLines(examples(scene)),
    say`Enter confirms, Left arrow takes back, Tab completes; or ask: what is a bar?`,
    topicsLine(),
  ];
};

const topicsLine = (): string =>
  say`Type help and a topic: ${helpTopics.map(titleOf).join(', ')}; or help all.`;

const topicLines = ({ lines, examples }: HelpTopic, { session }: Scene): readonly string[] => [
  ...lines(),
  ...exampleLines(examples(session)),
];

function commandLines({ usage, summary, example, aliases }: ChatCommand): readonly string[] {
  const also = aliases.length > 0 ? [say`Also: ${aliases.join(', ')}.`] : [];
  return [`${usage()}: ${summary()}.`, [say`For example: ${example}.`, ...also].join(' ')];
}

/** All commands in two columns, so that a window of 24 rows holds them. */
function allLines(): readonly string[] {
  const cells = chatCommands.map(({ name, gist }) => `${name.padEnd(nameWidth)}${gist()}`);
  const rows = Math.ceil(cells.length / 2);
  const table = cells.slice(0, rows).map((cell, i) => `${cell.padEnd(cellWidth)}${cells[rows + i] ?? ''}`);
  return [...table, say`Help and a command says more, such as help go.`];
}

const nameWidth = 9;
const cellWidth = 39;
