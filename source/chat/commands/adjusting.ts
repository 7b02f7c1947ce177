/** Commands that fit the bench to its maker: switches, signals, letters, units, language. */

import { isPedalGap, type PedalAct, pedalGap } from '../../settings/settings.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { languageChoices } from '../../wording/language.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, Intent } from '../intent.ts';
import { type ChatCommand, choice } from './chat-command.ts';

/** `gap 100`: presses of one switch closer together than this count as one. */
function parseGap(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: 'pedal gap 100' });
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

const switchCommand = (
  name: 'large' | 'bell' | 'speech',
  setting: 'largeView' | 'bell' | 'speech',
  summary: (words: Words) => string,
  gist: (words: Words) => string,
): ChatCommand => ({
  name,
  aliases: [],
  usage: (words: Words) => words.say`${name} on, or ${name} off`,
  summary,
  gist,
  example: `${name} on`,
  follows: onOff,
  parse: choice(onOff, (word) => ({ kind: 'set', change: { name: setting, value: word === 'on' } })),
});

export const adjustCommands: readonly ChatCommand[] = [
  {
    name: 'pedal',
    aliases: ['switch'],
    usage: (words: Words) =>
      words.say`pedal confirm / back / again / pass, pedal off, or pedal gap MILLISECONDS`,
    summary: (words: Words) =>
      words.say`give a foot switch something to do: type it, then press the switch; gap: presses closer together count as one`,
    gist: (words: Words) => words.say`assign a foot switch`,
    example: 'pedal confirm',
    follows: [...pedalWords, 'gap'],
    parse: (rest) => (/^gap\b/i.test(rest) ? parseGap(rest.slice('gap'.length).trim()) : parsePedal(rest)),
  },
  switchCommand(
    'large',
    'largeView',
    (words: Words) => words.say`big letters, to be read from across the bed`,
    (words: Words) => words.say`big letters`,
  ),
  switchCommand(
    'bell',
    'bell',
    (words: Words) => words.say`ring once for a step, twice for a shaping move, three times for a colour`,
    (words: Words) => words.say`ring at each step`,
  ),
  switchCommand(
    'speech',
    'speech',
    (words: Words) => words.say`speak each instruction aloud`,
    (words: Words) => words.say`speak each step`,
  ),
  {
    name: 'pause',
    aliases: [],
    usage: (words: Words) => words.say`pause short / usual / long`,
    summary: (words: Words) => words.say`how long to look before a new yarn, a rehang or the closing row`,
    gist: (words: Words) => words.say`how long to look twice`,
    example: 'pause long',
    follows: ['short', 'usual', 'long'],
    parse: choice(['short', 'usual', 'long'], (value) => ({ kind: 'set', change: { name: 'pause', value } })),
  },
  {
    name: 'units',
    aliases: [],
    usage: (words: Words) => words.say`units cm, or units in`,
    summary: (words: Words) => words.say`centimetres, grams and metres, or inches, ounces and yards`,
    gist: (words: Words) => words.say`centimetres or inches`,
    example: 'units cm',
    follows: ['cm', 'in'],
    parse: choice(['cm', 'in'], (value) => ({ kind: 'set', change: { name: 'units', value } })),
  },
  {
    name: 'language',
    aliases: [],
    usage: (words: Words) => words.say`language ${words.amounts.choice(languageChoices)}`,
    summary: (words: Words) => words.say`the language of all sentences; auto follows the system`,
    gist: (words: Words) => words.say`the language of sentences`,
    example: 'language de',
    follows: languageChoices,
    parse: choice(languageChoices, (value) => ({ kind: 'set', change: { name: 'language', value } })),
  },
];
