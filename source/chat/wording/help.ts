import { type ChatCommand, chatCommands, findCommand } from '../chat-commands.ts';

/** Keys that act on an empty prompt. */
const keyHelp: readonly string[] = [
  'Enter or Space confirms the step. Left arrow takes the last one back.',
  'Up and Down bring back what you typed; Tab completes a word. F2 shows large letters. Ctrl-C leaves.',
];

/** Help on everything, or on one command. */
export function formatTopic(topic: string | null): readonly string[] {
  if (topic === null)
    return [...keyHelp, ...chatCommands.map(summaryLine), 'Left and right are yours, facing the bed.'];
  const command = findCommand(topic.trim().toLowerCase());
  if (!command) return [`There is no help on ${topic.trim()}. Type help for all commands.`];
  const aliases = command.aliases.length > 0 ? ` Also: ${command.aliases.join(', ')}.` : '';
  return [`${command.usage}: ${command.summary}.`, `For example: ${command.example}.${aliases}`];
}

const summaryLine = ({ name, summary }: ChatCommand): string => `${name.padEnd(6)} ${summary}`;
