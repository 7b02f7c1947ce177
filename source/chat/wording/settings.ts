/** What the bench says about its switches and settings. */
import type { PedalAct, SettingChange, Settings } from '../../settings/settings.ts';
import { formatList } from './numbers.ts';

const pedalActNames: Readonly<Record<PedalAct, string>> = {
  confirm: 'confirms the step',
  'take-back': 'takes the last step back',
  speak: 'says the instruction again',
  pass: 'confirms a pass of the carriage',
};

/** As many foot switches as can be told apart with two feet and a row trip (rule of thumb). */
export const mostPedals = 3;

export const sayPressNow = (act: PedalAct): string =>
  `Press the switch now: it will be the one that ${pedalActNames[act]}. Escape leaves it.`;

/** The switch that was pressed, and how a letter can still be typed. */
export function sayAssigned(key: string, act: PedalAct): readonly string[] {
  const assigned = `The switch types ${key}. With nothing typed, it now ${pedalActNames[act]}.`;
  return key.length === 1
    ? [assigned, `To type a command that begins with ${key}, put a slash before it: /${key}…`, cableCaution]
    : [assigned, cableCaution];
}

export const cableCaution =
  'Keep the switch and its cable clear of your feet, and out from under the weights.';

export const sayTooManyPedals = `There are ${mostPedals} switches already: type pedal off to forget them.`;
export const sayPedalsForgotten = 'All switches are forgotten.';
export const sayCannotAssign = (key: string): string =>
  `${key} is needed by the prompt itself: press another key.`;
export const sayPedalLeft = 'No switch was assigned.';

export function sayPedals({ pedals }: Settings): string {
  const all = Object.entries(pedals).map(([key, act]) => `${key} ${pedalActNames[act]}`);
  return all.length === 0
    ? 'No switch is assigned. Type pedal confirm, then press the switch.'
    : `Switches: ${formatList(all)}.`;
}

export function saySet({ name, value }: SettingChange): string {
  switch (name) {
    case 'largeView':
      return value ? 'Large view on.' : 'Large view off.';
    case 'bell':
      return value
        ? 'The bell rings: once a step, twice a shaping move, three times a colour.'
        : 'The bell is off.';
    case 'speech':
      return value ? 'Instructions are spoken.' : 'Instructions are not spoken.';
    case 'caution':
      return `Care is ${value}: it takes ${careMs[value] / 1000} s of looking before a step that must not be trodden past.`;
    case 'units':
      return value === 'cm' ? 'Centimetres, grams and metres.' : 'Inches, ounces and yards.';
    default:
      return `${name} is set.`;
  }
}

/** How long after the last press a guarded step takes no press (rule of thumb). */
export const careMs: Readonly<Record<Settings['caution'], number>> = { low: 0, usual: 600, high: 1500 };

export const sayLookFirst =
  'That came too soon after the last press. Look at this step first, then press again.';
export const sayNoPassDue = (instruction: string): string =>
  `A pass came where none is due. What comes next: ${instruction}`;
export const saySpeechTrouble = (trouble: 'no-program' | 'failed', program: string): string =>
  trouble === 'no-program'
    ? `Nothing can be spoken: there is no speech program here (looked for ${program}).`
    : `The speech program ${program} failed, so nothing is spoken.`;

export const saySettingsSetAside = (keptAs: string): string =>
  `The settings could not be read. They are kept as ${keptAs}, and the usual ones are used.`;
export const saySettingsRefused = (names: readonly string[]): string =>
  `These settings have values that cannot be, and are passed over: ${formatList(names)}.`;
