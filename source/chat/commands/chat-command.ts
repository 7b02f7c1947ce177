/** A row of the table of commands, and what the parsers of its rows share. */
import { fail, type Result, succeed } from '../../shared/result.ts';
import { say } from '../../shared/say.ts';
import type { ChatFault, Intent } from '../intent.ts';

export interface ChatCommand {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly usage: () => string;
  readonly summary: () => string;
  /** What it does in at most 28 characters, for a table in two columns. */
  readonly gist: () => string;
  /** A line that works when typed. */
  readonly example: string;
  /** First words that may follow, for completion. */
  readonly follows: readonly string[];
  readonly parse: (rest: string) => Result<Intent, ChatFault>;
}

export const plainIntent = (intent: Intent) => (): Result<Intent, ChatFault> => succeed(intent);

export const withText =
  (usage: () => string, make: (text: string) => Intent) =>
  (rest: string): Result<Intent, ChatFault> =>
    rest === '' ? fail({ code: 'chat/needs-more', usage: usage() }) : succeed(make(rest));

/** A command that takes one word out of a few; none at all where `bare` has an answer. */
export function choice<Word extends string>(
  words: readonly Word[],
  make: (word: Word) => Intent,
  bare: Intent | null = null,
) {
  return (rest: string): Result<Intent, ChatFault> => {
    if (rest === '' && bare) return succeed(bare);
    const begun = words.filter((word) => word.startsWith(rest.toLowerCase()));
    const word =
      words.find((one) => one === rest.toLowerCase()) ?? (begun.length === 1 ? begun[0] : undefined);
    return word === undefined || rest === ''
      ? fail({ code: 'chat/not-a-choice', word: rest === '' ? say`nothing` : rest, choices: words })
      : succeed(make(word));
  };
}
