/** Commands that are answered and change nothing. */
import { type Result, succeed } from '../../shared/result.ts';
import { reasons, tradeWords } from '../../wording/explain.ts';
import { englishWords } from '../../wording/words.ts';
import type { ChatFault, Intent } from '../grammar/intent.ts';
import { troubleIn, troubles } from '../grammar/trouble.ts';
import { alone, type ChatCommand, plainIntent, row } from './chat-command.ts';

/** What is to be done now is no word of the trade. */
const asksForStep =
  /^(?:now|next|(?:is|comes) (?:now|next|after this)|do i do(?: now| next)?|jetzt|nun|kommt (?:jetzt|nun|dann|danach|als nächstes)|mache ich jetzt)\?*$/i;

function parseWords(rest: string): Result<Intent, ChatFault> {
  if (asksForStep.test(rest)) return succeed({ kind: 'again' });
  return succeed({ kind: 'words', about: rest === '' ? null : rest });
}

export const askCommands: readonly ChatCommand[] = [
  row({
    name: 'where',
    example: 'where',
    parse: plainIntent({ kind: 'show', what: 'where' }, 'where', (rest) => `find ${rest}`),
    aliases: ['here'],
  }),
  alone('plan', { kind: 'show', what: 'plan' }),
  row({
    name: 'words',
    example: 'words swatch',
    parse: parseWords,
    aliases: ['word', 'what', "what's", 'was', 'explain', 'erkläre'],
    follows: tradeWords.map(({ id }) => id),
  }),
  row({
    name: 'why',
    example: 'why tail',
    parse: (rest) => succeed({ kind: 'why', about: rest === '' ? null : rest }),
    aliases: ['warum', 'wieso'],
    follows: reasons.map(({ id }) => id),
  }),
  alone('tools', { kind: 'show', what: 'tools' }, ['materials', 'material']),
  row({
    name: 'trouble',
    example: 'trouble jam',
    parse: (rest, words) => succeed({ kind: 'trouble', what: troubleIn(rest, words) }),
    aliases: ['problem'],
    follows: troubles,
  }),
  alone('cautions', { kind: 'show', what: 'cautions' }),
  alone('again', { kind: 'again' }),
  row({
    name: 'help',
    example: 'help go',
    parse: (rest) => succeed({ kind: 'help', topic: rest === '' ? null : rest }),
    aliases: ['?', 'hilfe'],
    follows: ['all', ...Object.keys(englishWords.help.topics)],
  }),
];
