/** Commands that are answered and change nothing. */
import { type Result, succeed } from '../../shared/result.ts';
import { reasons, tradeWords } from '../../wording/explain.ts';
import { englishWords } from '../../wording/words.ts';
import type { ChatFault, Intent } from '../grammar/intent.ts';
import { troubleIn, troubles } from '../grammar/trouble.ts';
import { type ChatCommand, plainIntent } from './chat-command.ts';

/** What is to be done now is no word of the trade. */
const asksForStep = /^(?:now|next|do i do(?: now| next)?|jetzt|nun|kommt jetzt|mache ich jetzt)\?*$/i;

function parseWords(rest: string): Result<Intent, ChatFault> {
  if (asksForStep.test(rest)) return succeed({ kind: 'again' });
  return succeed({ kind: 'words', about: rest === '' ? null : rest });
}

export const askCommands: readonly ChatCommand[] = [
  {
    name: 'where',
    aliases: ['here'],
    example: 'where',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'where' }, 'where', (rest) => `find ${rest}`),
  },
  {
    name: 'plan',
    aliases: [],
    example: 'plan',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'plan' }, 'plan'),
  },
  {
    name: 'words',
    aliases: ['word', 'what', "what's", 'was', 'explain', 'erkläre'],
    example: 'words swatch',
    follows: tradeWords.map(({ id }) => id),
    parse: parseWords,
  },
  {
    name: 'why',
    aliases: ['warum', 'wieso'],
    example: 'why tail',
    follows: reasons.map(({ id }) => id),
    parse: (rest) => succeed({ kind: 'why', about: rest === '' ? null : rest }),
  },
  {
    name: 'tools',
    aliases: ['materials', 'material'],
    example: 'tools',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'tools' }, 'tools'),
  },
  {
    name: 'trouble',
    aliases: ['problem'],
    example: 'trouble jam',
    follows: troubles,
    parse: (rest, words) => succeed({ kind: 'trouble', what: troubleIn(rest, words) }),
  },
  {
    name: 'cautions',
    aliases: [],
    example: 'cautions',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'cautions' }, 'cautions'),
  },
  {
    name: 'again',
    aliases: [],
    example: 'again',
    follows: [],
    parse: plainIntent({ kind: 'again' }, 'again'),
  },
  {
    name: 'help',
    aliases: ['?', 'hilfe'],
    example: 'help go',
    follows: ['all', ...Object.keys(englishWords.help.topics)],
    parse: (rest) => succeed({ kind: 'help', topic: rest === '' ? null : rest }),
  },
];
