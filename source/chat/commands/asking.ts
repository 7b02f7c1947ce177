/** Commands that are answered and change nothing. */
import { type Result, succeed } from '../../shared/result.ts';
import { reasons, tradeWords } from '../../wording/explain.ts';
import { englishWords, type Words } from '../../wording/words.ts';
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
    usage: () => 'where',
    summary: (words: Words) => words.commands.where.summary,
    gist: (words: Words) => words.commands.where.gist,
    example: 'where',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'where' }, 'where', (rest) => `find ${rest}`),
  },
  {
    name: 'plan',
    aliases: [],
    usage: () => 'plan',
    summary: (words: Words) => words.commands.plan.summary,
    gist: (words: Words) => words.commands.plan.gist,
    example: 'plan',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'plan' }, 'plan'),
  },
  {
    name: 'words',
    aliases: ['word', 'what', "what's", 'was'],
    usage: (words: Words) => words.commands.words.usage,
    summary: (words: Words) => words.commands.words.summary,
    gist: (words: Words) => words.commands.words.gist,
    example: 'words swatch',
    follows: tradeWords.map(({ id }) => id),
    parse: parseWords,
  },
  {
    name: 'why',
    aliases: ['warum', 'wieso'],
    usage: (words: Words) => words.commands.why.usage,
    summary: (words: Words) => words.commands.why.summary,
    gist: (words: Words) => words.commands.why.gist,
    example: 'why tail',
    follows: reasons.map(({ id }) => id),
    parse: (rest) => succeed({ kind: 'why', about: rest === '' ? null : rest }),
  },
  {
    name: 'tools',
    aliases: ['materials', 'material'],
    usage: (words: Words) => words.kit.usage,
    summary: (words: Words) => words.kit.summary,
    gist: (words: Words) => words.kit.gist,
    example: 'tools',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'tools' }, 'tools'),
  },
  {
    name: 'trouble',
    aliases: ['problem'],
    usage: (words: Words) => words.trouble.usage,
    summary: (words: Words) => words.trouble.summary,
    gist: (words: Words) => words.trouble.gist,
    example: 'trouble jam',
    follows: troubles,
    parse: (rest, words) => succeed({ kind: 'trouble', what: troubleIn(rest, words) }),
  },
  {
    name: 'cautions',
    aliases: [],
    usage: () => 'cautions',
    summary: (words: Words) => words.commands.cautions.summary,
    gist: (words: Words) => words.commands.cautions.gist,
    example: 'cautions',
    follows: [],
    parse: plainIntent({ kind: 'show', what: 'cautions' }, 'cautions'),
  },
  {
    name: 'again',
    aliases: [],
    usage: () => 'again',
    summary: (words: Words) => words.commands.again.summary,
    gist: (words: Words) => words.commands.again.gist,
    example: 'again',
    follows: [],
    parse: plainIntent({ kind: 'again' }, 'again'),
  },
  {
    name: 'help',
    aliases: ['?', 'hilfe'],
    usage: (words: Words) => words.commands.help.usage,
    summary: (words: Words) => words.commands.help.summary,
    gist: (words: Words) => words.commands.help.gist,
    example: 'help go',
    follows: ['all', ...Object.keys(englishWords.help.topics)],
    parse: (rest) => succeed({ kind: 'help', topic: rest === '' ? null : rest }),
  },
];
