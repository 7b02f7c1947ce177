/** The grammar of the prompt as a table: help, completion and "did you mean" all come out of it. */
import { fail, type Result, succeed } from '../shared/result.ts';
import type { ChatFault, Intent } from './intent.ts';
import { parsePlace, placeWords } from './parse-place.ts';

export interface ChatCommand {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly usage: string;
  readonly summary: string;
  /** A line that works when typed. */
  readonly example: string;
  /** First words that may follow, for completion. */
  readonly follows: readonly string[];
  readonly parse: (rest: string) => Result<Intent, ChatFault>;
}

const plainIntent = (intent: Intent) => (): Result<Intent, ChatFault> => succeed(intent);

const withText =
  (usage: string, make: (text: string) => Intent) =>
  (rest: string): Result<Intent, ChatFault> =>
    rest === '' ? fail({ code: 'chat/needs-more', usage }) : succeed(make(rest));

function parseNext(rest: string): Result<Intent, ChatFault> {
  const wanted = rest === '' ? 1 : Number(rest);
  if (!Number.isInteger(wanted) || wanted < 1) {
    return fail({ code: 'chat/not-a-count', word: rest, usage: 'next 4' });
  }
  return succeed({ kind: 'do', command: { do: 'confirm', count: wanted } });
}

export const chatCommands: readonly ChatCommand[] = [
  {
    name: 'next',
    aliases: ['n', 'done', 'ok'],
    usage: 'next [how many]',
    summary: 'confirm the step on the screen, or several at once',
    example: 'next 2',
    follows: [],
    parse: parseNext,
  },
  {
    name: 'back',
    aliases: ['b', 'undo'],
    usage: 'back',
    summary: 'take back the last confirmation or jump',
    example: 'back',
    follows: [],
    parse: plainIntent({ kind: 'do', command: { do: 'take-back' } }),
  },
  {
    name: 'redo',
    aliases: ['again'],
    usage: 'redo',
    summary: 'do again what was taken back',
    example: 'redo',
    follows: [],
    parse: plainIntent({ kind: 'do', command: { do: 'redo' } }),
  },
  {
    name: 'go',
    aliases: ['jump', 'goto'],
    usage: 'go PHASE, or go stripe / row / move / step / mark and its number or name',
    summary: 'jump to a place: it comes next',
    example: 'go stripe 3',
    follows: placeWords,
    parse: parsePlace,
  },
  {
    name: 'where',
    aliases: ['w', 'here'],
    usage: 'where',
    summary: 'where you are, and what the bed should look like',
    example: 'where',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'where' }),
  },
  {
    name: 'plan',
    aliases: ['p'],
    usage: 'plan',
    summary: 'the whole plan: size, yarn, needles, tails',
    example: 'plan',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'plan' }),
  },
  {
    name: 'note',
    aliases: [],
    usage: 'note TEXT',
    summary: 'keep a remark at this step',
    example: 'note mint feels tighter here',
    follows: [],
    parse: withText('note TEXT', (text) => ({ kind: 'do', command: { do: 'note', text } })),
  },
  {
    name: 'notes',
    aliases: [],
    usage: 'notes',
    summary: 'the remarks kept so far',
    example: 'notes',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'notes' }),
  },
  {
    name: 'mark',
    aliases: [],
    usage: 'mark NAME',
    summary: 'name this place, to go back to it',
    example: 'mark before the re-seat',
    follows: [],
    parse: withText('mark NAME', (name) => ({ kind: 'do', command: { do: 'mark', name } })),
  },
  {
    name: 'marks',
    aliases: [],
    usage: 'marks',
    summary: 'the places named so far',
    example: 'marks',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'marks' }),
  },
  {
    name: 'help',
    aliases: ['h', '?'],
    usage: 'help [command]',
    summary: 'what can be typed, and the keys',
    example: 'help go',
    follows: [],
    parse: (rest) => succeed({ kind: 'help', topic: rest === '' ? null : rest }),
  },
  {
    name: 'quit',
    aliases: ['q', 'exit', 'leave'],
    usage: 'quit',
    summary: 'leave; everything is saved, and you come back to this step',
    example: 'quit',
    follows: [],
    parse: plainIntent({ kind: 'leave' }),
  },
];

export const findCommand = (word: string): ChatCommand | undefined =>
  chatCommands.find((command) => command.name === word || command.aliases.includes(word));
