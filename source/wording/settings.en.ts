import type { PedalAct, Settings } from '../settings/settings.ts';
import type { Amounts } from './amounts.ts';

const acts: Readonly<Record<PedalAct, string>> = {
  confirm: 'confirms the step',
  back: 'takes the last step back',
  again: 'says the instruction again',
  pass: 'confirms a pass of the carriage',
};

/** What each is called at the prompt, in every language. */
export const typedNames: Readonly<Record<keyof Settings, string>> = {
  units: 'units',
  language: 'language',
  bell: 'bell',
  speech: 'speech',
  pause: 'pause',
  pedals: 'pedal',
  pedalGapMs: 'pedal gap',
  large: 'large',
  ascii: 'ascii',
};

export const settings = ({ decimal, list, choice }: Amounts) => ({
  languageIs: (setting: string): string =>
    setting === 'auto' ? 'as the system has it, now English.' : 'English.',
  pressNow: (act: PedalAct) =>
    `Press the switch now: it will be the one that ${acts[act]}. If nothing happens, the terminal keeps its key to itself. Escape cancels.`,
  assigned: (key: string, act: PedalAct) =>
    `The switch types ${key}. With nothing typed, it now ${acts[act]}.`,
  pastSwitches: (letters: readonly string[]) =>
    `To type a command that begins with ${choice(letters)}, put a slash before it: ${list(letters.map((letter) => `/${letter}…`))}`,
  cable: 'Place the switch where nobody trips over it or its cable. Keep both clear of the weights.',
  tooManyPedals: (most: number) => `There are ${most} switches already: type pedal off to forget them.`,
  pedalsForgotten: 'All switches are forgotten.',
  cannotAssign: (key: string) => `${key} is needed by the prompt itself: press another key.`,
  noPedalHere:
    'Here a whole line is read at a time: a switch that types Enter confirms as it is, others need the screen.',
  pedalLeft: 'No switch was assigned.',
  noPedals: 'No switch is assigned. Type pedal confirm, then press the switch.',
  pedals: (pedals: Settings['pedals']) =>
    `Switches: ${list(Object.entries(pedals).map(([key, act]) => `${key} ${acts[act]}`))}. Type pedal and confirm, back, again or pass for one more, pedal off to forget them.`,

  large: (on: boolean): string =>
    on ? 'Large letters on, if the window has 20 rows or more.' : 'Large letters off.',
  bell: (on: boolean): string =>
    on
      ? 'The bell is on: once for a step, twice for a shaping move, three times for a change of yarn, four times for a press that did nothing.'
      : 'The bell is off.',
  speech: (on: boolean): string => (on ? 'Instructions are spoken.' : 'Instructions are not spoken.'),
  pause: (pause: Settings['pause'], waitMs: number) =>
    waitMs === 0
      ? `The pause is ${pause}: no step waits longer than another.`
      : `The pause is ${pause}: a risky step stays on the screen for ${decimal(waitMs / 1000)} s before a press counts.`,
  pedalGap: (ms: number) => `Presses of one switch less than ${ms} ms apart count as one.`,
  units: (units: Settings['units']): string =>
    units === 'cm' ? 'Centimetres, grams and metres.' : 'Inches, ounces and yards.',
  language: (followsSystem: boolean): string =>
    followsSystem ? 'The language follows the system: English.' : 'From here on in English.',
  set: (name: keyof Settings) => `${name} is set.`,

  tooSoon: 'That press came too soon. Look at this step first, then press again.',
  /** What comes next stands behind it. */
  noPassDue: 'A pass came where none is due. What comes next:',
  nothingIsNext: 'nothing, the bag is finished.',

  noSpeechProgram: (lookedFor: readonly string[]) =>
    `Instructions cannot be spoken here: install one of the speech programs ${lookedFor.join(', ')}.`,
  speechFailed: (program: string) => `The speech program ${program} failed, so nothing is spoken.`,

  setAside: (keptAs: string) =>
    `The settings could not be read. They are kept as ${keptAs}, and the usual ones are used.`,
  refused: (names: readonly string[]) =>
    `These settings have values that are not allowed, and were ignored: ${list(names)}.`,
  noSuchLanguage: (code: string, choices: readonly string[]) =>
    `The settings ask for the language ${code}, which is not here, so this is English: set language to ${choice(choices)}.`,
});
