/** Commands that fit the bench to its maker: switches, signals, letters, units, language. */

import {
  isPedalGap,
  languageChoices,
  pedalGap,
  type SettingChange,
  type SettingName,
} from '../../settings/settings.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { CommandName } from '../../wording/commands.en.ts';
import type { ChatFault, Intent } from '../grammar/intent.ts';
import { alone, type ChatCommand, choice, row } from './chat-command.ts';

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
