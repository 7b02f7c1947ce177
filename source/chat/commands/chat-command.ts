/** A row of the table of commands, and what the parsers of its rows share. */
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { CommandName } from '../../wording/commands.en.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, Intent, Known } from '../grammar/intent.ts';

export interface ChatCommand {
  /** Its words, how it is typed and what it does, stand under it in the topic of commands. */
  readonly name: CommandName;
  readonly aliases: readonly string[];
  /** A line that works when typed. */
  readonly example: string;
  /** First words that may follow, for completion. */
  readonly follows: readonly string[];
  readonly parse: (rest: string, words: Words, known: Known) => Result<Intent, ChatFault>;
}

/** How it is typed: by its name alone where its words say no more. */
export const usageOf = ({ name }: ChatCommand, { commands }: Words): string => commands[name].usage ?? name;

/** A command of one word: what follows it is refused, since somebody who typed it meant something else. */
export const plainIntent =
  (intent: Intent, command: string, instead: (rest: string) => string | null = () => null) =>
  (rest: string): Result<Intent, ChatFault> =>
    rest === ''
      ? succeed(intent)
      : fail({ code: 'chat/takes-nothing', command, rest, instead: instead(rest) });

/** Most have no other names, and any word may follow them. */
export const row = (given: Omit<ChatCommand, 'aliases' | 'follows'> & Partial<ChatCommand>): ChatCommand => ({
  aliases: [],
  follows: [],
  ...given,
});

/** A row of one word that always asks for the same. */
export const alone = (name: CommandName, intent: Intent, aliases: readonly string[] = []): ChatCommand =>
  row({ name, aliases, example: name, parse: plainIntent(intent, name) });

export const withText =
  (usage: string, make: (text: string) => Intent) =>
  (rest: string): Result<Intent, ChatFault> =>
    rest === '' ? fail({ code: 'chat/needs-more', usage }) : succeed(make(rest));

/** A command that takes one word out of a few; none at all where `bare` has an answer. */
export function choice<Word extends string>(
  allowed: readonly Word[],
  make: (word: Word) => Intent,
  bare: Intent | null = null,
) {
  return (rest: string): Result<Intent, ChatFault> => {
    if (rest === '' && bare) return succeed(bare);
    const begun = allowed.filter((word) => word.startsWith(rest.toLowerCase()));
    const word =
      allowed.find((one) => one === rest.toLowerCase()) ?? (begun.length === 1 ? begun[0] : undefined);
    return word === undefined || rest === ''
      ? fail({ code: 'chat/not-a-choice', word: rest === '' ? null : rest, choices: allowed })
      : succeed(make(word));
  };
}
