/** Commands that are answered and change nothing of the work, and those that fit the bench to its maker: switches, signals, letters, units, language. */

import {
  isPedalGap,
  languageChoices,
  pedalGap,
  type SettingChange,
  type SettingName,
} from '../../settings/settings.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { CommandName } from '../../wording/commands.en.ts';
import { reasons, tradeWords } from '../../wording/explain.ts';
import { englishWords } from '../../wording/words.ts';
import type { ChatFault, Intent } from '../grammar/intent.ts';
import { troubleIn, troubles } from '../grammar/trouble.ts';
import { alone, type ChatCommand, choice, plainIntent, row } from './chat-command.ts';

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

/** `gap 100`: presses of one switch closer together than this count as one. */
function parseGap(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return succeed({ kind: 'settings', of: 'pedalGapMs' });
  return isPedalGap(Number(rest))
    ? succeed({ kind: 'set', change: { name: 'pedalGapMs', value: Number(rest) } })
    : fail({ code: 'chat/not-in-range', word: rest, ...pedalGap });
}

const pedalWords = ['confirm', 'back', 'again', 'pass', 'off'] as const;

const parsePedal = choice(pedalWords, (act) => ({ kind: 'pedal', act }), { kind: 'pedal', act: null });

/** With nothing behind its name it tells how the setting stands. */
const settingRow = <Word extends string>(
  name: CommandName & SettingName,
  shown: Word,
  values: readonly Word[],
  change: (value: Word) => SettingChange,
): ChatCommand =>
  row({
    name,
    example: `${name} ${shown}`,
    parse: choice(values, (value) => ({ kind: 'set', change: change(value) }), {
      kind: 'settings',
      of: name,
    }),
    follows: values,
  });

const switchRow = (name: 'large' | 'bell' | 'speech'): ChatCommand =>
  settingRow(name, 'on', ['on', 'off'], (word) => ({ name, value: word === 'on' }));

export const adjustCommands: readonly ChatCommand[] = [
  alone('settings', { kind: 'settings', of: null }),
  row({
    name: 'pedal',
    example: 'pedal confirm',
    parse: (rest) => (/^gap\b/i.test(rest) ? parseGap(rest.slice('gap'.length).trim()) : parsePedal(rest)),
    aliases: ['switch'],
    follows: [...pedalWords, 'gap'],
  }),
  switchRow('large'),
  switchRow('bell'),
  switchRow('speech'),
  settingRow('pause', 'long', ['short', 'usual', 'long'], (value) => ({ name: 'pause', value })),
  settingRow('units', 'cm', ['cm', 'in'], (value) => ({ name: 'units', value })),
  settingRow('language', 'de', languageChoices, (value) => ({ name: 'language', value })),
];
