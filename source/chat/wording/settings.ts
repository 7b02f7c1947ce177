/** What the bench says about its switches and settings. */
import { languageChoices } from '../../languages/languages.ts';
import { currentStep, type Session } from '../../session/session.ts';
import type { PedalAct, SettingChange, Settings } from '../../settings/settings.ts';
import { formatChoice, formatList, say } from '../../shared/say.ts';
import type { Units } from '../../shared/units.ts';
import { sayStep } from './steps.ts';

const pedalActNames: Readonly<Record<PedalAct, () => string>> = {
  confirm: () => say`confirms the step`,
  'take-back': () => say`takes the last step back`,
  speak: () => say`says the instruction again`,
  pass: () => say`confirms a pass of the carriage`,
};

/** As many foot switches as can be told apart with two feet and a row trip (rule of thumb). */
export const mostPedals = 3;

export const sayPressNow = (act: PedalAct): string =>
  say`Press the switch now: it will be the one that ${pedalActNames[act]()}. If nothing happens, the terminal does not pass its key on. Escape leaves it.`;

/** The switch that was pressed, and how a letter can still be typed. */
export function sayAssigned(key: string, act: PedalAct): readonly string[] {
  const assigned = say`The switch types ${key}. With nothing typed, it now ${pedalActNames[act]()}.`;
  return [assigned, ...sayPast([key]), sayCableCaution()];
}

/** How to type a command that begins with a switch's letter; nothing where no switch types one. */
export const sayPastSwitches = ({ pedals }: Settings): readonly string[] => sayPast(Object.keys(pedals));

function sayPast(keys: readonly string[]): readonly string[] {
  const letters = keys.map((key) => key.replace(/^shift\+/, '')).filter((key) => [...key].length === 1);
  if (letters.length === 0) return [];
  const examples = formatList(letters.map((letter) => `/${letter}…`));
  return [
    say`To type a command that begins with ${formatChoice(letters)}, put a slash before it: ${examples}`,
  ];
}

export const sayCableCaution = (): string =>
  say`Keep the switch and its cable clear of your feet, and out from under the weights.`;

export const sayTooManyPedals = (): string =>
  say`There are ${mostPedals} switches already: type pedal off to forget them.`;
export const sayPedalsForgotten = (): string => say`All switches are forgotten.`;
export const sayCannotAssign = (key: string): string =>
  say`${key} is needed by the prompt itself: press another key.`;
export const sayNoPedalHere = (): string =>
  say`Here a whole line is read at a time: a switch that types Enter confirms as it is, others need the screen.`;
export const sayPedalLeft = (): string => say`No switch was assigned.`;

export function sayPedals({ pedals }: Settings): string {
  const all = Object.entries(pedals).map(([key, act]) => `${key} ${pedalActNames[act]()}`);
  return all.length === 0
    ? say`No switch is assigned. Type pedal confirm, then press the switch.`
    : say`Switches: ${formatList(all)}. Type pedal and confirm, back, again or pass for one more, pedal off to forget them.`;
}

/** Said once it is so: the language itself is one of the settings. */
export function saySet({ name, value }: SettingChange): string {
  switch (name) {
    case 'largeView':
      return value ? say`Large view on, wherever the window has 20 rows or more.` : say`Large view off.`;
    case 'bell':
      return value
        ? say`The bell rings: once a step, twice a shaping move, three times a change of yarn, four times where a press did nothing.`
        : say`The bell is off.`;
    case 'speech':
      return value ? say`Instructions are to be spoken.` : say`Instructions are not spoken.`;
    case 'caution':
      return value === 'low'
        ? say`Care is low: no step takes longer than another.`
        : say`Care is ${value}: a step that must not be trodden past is there for ${careMs[value] / 1000} s before a press counts.`;
    case 'pressWindowMs':
      return say`Presses of one switch less than ${value} ms apart count as one.`;
    case 'units':
      return value === 'cm' ? say`Centimetres, grams and metres.` : say`Inches, ounces and yards.`;
    case 'language':
      return value === 'auto'
        ? say`The language follows the system: English.`
        : say`From here on in English.`;
    default:
      return say`${name} is set.`;
  }
}

/** How long a guarded step is there to be looked at before a press counts (rule of thumb). */
export const careMs: Readonly<Record<Settings['caution'], number>> = { low: 0, usual: 600, high: 1500 };

/** Why a press did nothing. */
export type Warning = 'too-soon' | 'no-pass-due';

export function sayWarning(warning: Warning, session: Session, units: Units): string {
  if (warning === 'too-soon')
    return say`That press came too soon. Look at this step first, then press again.`;
  const step = currentStep(session);
  const next = step ? sayStep(session.job.plan, step, units) : say`nothing, the bag is finished.`;
  return say`A pass came where none is due. What comes next: ${next}`;
}

export const saySpeechTrouble = (trouble: 'no-program' | 'failed', program: string): string =>
  trouble === 'no-program'
    ? say`Nothing can be spoken: there is no speech program here (looked for ${program}).`
    : say`The speech program ${program} failed, so nothing is spoken.`;

export const saySettingsSetAside = (keptAs: string): string =>
  say`The settings could not be read. They are kept as ${keptAs}, and the usual ones are used.`;
export const saySettingsRefused = (names: readonly string[]): string =>
  say`These settings have values that cannot be, and are passed over: ${formatList(names)}.`;

/** The settings ask for a language that this program does not speak. */
export const sayNoSuchLanguage = (code: string): string =>
  say`The settings ask for the language ${code}, which is not here, so this is English: set language to ${formatChoice(languageChoices)}.`;
