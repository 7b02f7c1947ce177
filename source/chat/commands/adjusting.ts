/** Commands that fit the bench to its maker: switches, signals, letters, units, language. */

import { isPedalGap, languageChoices, type PedalAct, pedalGap } from '../../settings/settings.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { ChatFault, Intent } from '../grammar/intent.ts';
import { type ChatCommand, choice, plainIntent } from './chat-command.ts';

/** `gap 100`: presses of one switch closer together than this count as one. */
function parseGap(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return succeed({ kind: 'settings', of: 'pedalGapMs' });
  return isPedalGap(Number(rest))
    ? succeed({ kind: 'set', change: { name: 'pedalGapMs', value: Number(rest) } })
    : fail({ code: 'chat/not-in-range', word: rest, ...pedalGap });
}

const onOff = ['on', 'off'] as const;

const pedalWords = ['confirm', 'back', 'again', 'pass', 'off'] as const;
const pedalActs: Readonly<Record<(typeof pedalWords)[number], PedalAct | 'off'>> = {
  confirm: 'confirm',
  back: 'back',
  again: 'again',
  pass: 'pass',
  off: 'off',
};

const parsePedal = choice(pedalWords, (word) => ({ kind: 'pedal', act: pedalActs[word] }), {
  kind: 'pedal',
  act: null,
});

const switchCommand = (name: 'large' | 'bell' | 'speech'): ChatCommand => ({
  name,
  aliases: [],
  example: `${name} on`,
  follows: onOff,
  parse: choice(onOff, (word) => ({ kind: 'set', change: { name, value: word === 'on' } }), {
    kind: 'settings',
    of: name,
  }),
});

export const adjustCommands: readonly ChatCommand[] = [
  {
    name: 'settings',
    aliases: [],
    example: 'settings',
    follows: [],
    parse: plainIntent({ kind: 'settings', of: null }, 'settings'),
  },
  {
    name: 'pedal',
    aliases: ['switch'],
    example: 'pedal confirm',
    follows: [...pedalWords, 'gap'],
    parse: (rest) => (/^gap\b/i.test(rest) ? parseGap(rest.slice('gap'.length).trim()) : parsePedal(rest)),
  },
  switchCommand('large'),
  switchCommand('bell'),
  switchCommand('speech'),
  {
    name: 'pause',
    aliases: [],
    example: 'pause long',
    follows: ['short', 'usual', 'long'],
    parse: choice(
      ['short', 'usual', 'long'],
      (value) => ({ kind: 'set', change: { name: 'pause', value } }),
      {
        kind: 'settings',
        of: 'pause',
      },
    ),
  },
  {
    name: 'units',
    aliases: [],
    example: 'units cm',
    follows: ['cm', 'in'],
    parse: choice(['cm', 'in'], (value) => ({ kind: 'set', change: { name: 'units', value } }), {
      kind: 'settings',
      of: 'units',
    }),
  },
  {
    name: 'language',
    aliases: [],
    example: 'language de',
    follows: languageChoices,
    parse: choice(languageChoices, (value) => ({ kind: 'set', change: { name: 'language', value } }), {
      kind: 'settings',
      of: 'language',
    }),
  },
];
