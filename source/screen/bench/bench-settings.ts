/** The settings of a bench, and its foot switches among them. */
import { answer } from '../../chat/talk.ts';
import {
  mostPedals,
  type PedalAct,
  pauseMs,
  type SettingChange,
  type SettingName,
  settingNames,
} from '../../settings/settings.ts';
import { unitsFor } from '../../shared/units.ts';
import { typedNames } from '../../wording/settings.en.ts';
import { type Language, type Words, wordsIn } from '../../wording/words.ts';
import { andThen, type BenchState, only, type Reaction, withLines } from './bench-state.ts';

/** Takes a setting over and keeps it for the next time. A language that has not come yet is waited for. */
export function set(state: BenchState, change: SettingChange): Reaction {
  const settings = { ...state.settings, [change.name]: change.value };
  const words = change.name === 'units' ? wordsIn(state.language, unitsFor(change.value)) : state.words;
  return [{ ...state, settings, words }, [{ do: 'keep', change }]];
}

export function setAndTell(state: BenchState, change: SettingChange): Reaction {
  if (change.name === 'language') return [state, [{ do: 'load-language', setting: change.value }]];
  const [after, effects] = andThen(set(state, change), (next) =>
    tell(next, saySet(next.words.settings, change)),
  );
  // Speech begins with the step on the screen, or falls silent in the middle of it.
  return [after, change.name === 'speech' ? [...effects, { do: 'announce', why: 'again' }] : effects];
}

/** All is said in the language that was asked for, its own answer first. */
export function changeLanguage(state: BenchState, language: Language, setting: string): Reaction {
  const words = wordsIn(language, state.words.units);
  return andThen(set({ ...state, language, words }, { name: 'language', value: setting }), (next) =>
    tell(next, words.settings.language(setting === 'auto')),
  );
}

function saySet(say: Words['settings'], { name, value }: SettingChange): string {
  switch (name) {
    case 'large':
      return say.large(value);
    case 'bell':
      return say.bell(value);
    case 'speech':
      return say.speech(value);
    case 'pause':
      return say.pause(value, pauseMs[value]);
    case 'pedalGapMs':
      return say.pedalGap(value);
    case 'units':
      return say.units(value);
    default:
      return say.set(name);
  }
}

/** How one setting stands, or all of them, with the words that change them. */
export function tellSettings({ settings, words, ...state }: BenchState, of: SettingName | null): Reaction {
  const { settings: say } = words;
  const stands = (name: SettingName): string => {
    if (name === 'language') return say.languageIs(settings.language);
    if (name === 'pedals')
      return Object.keys(settings.pedals).length === 0 ? say.noPedals : say.pedals(settings.pedals);
    return saySet(say, { name, value: settings[name] } as SettingChange);
  };
  const names = of === null ? settingNames.filter((name) => name !== 'ascii') : [of];
  return tell({ ...state, settings, words }, ...names.map((name) => `${typedNames[name]}: ${stands(name)}`));
}

/** Keys that a foot switch cannot have, since the prompt would be lost without them. */
const reservedKeys: ReadonlySet<string> = new Set(['enter', '/', 'paste']);

/** Waits for a press of a switch and gives it this to do; or tells of the switches, or forgets them. */
export function beginPedal(state: BenchState, act: PedalAct | 'off' | null): Reaction {
  const { settings, words } = state;
  if (act === null && Object.keys(settings.pedals).length > 0) {
    return tell(state, words.settings.pedals(settings.pedals));
  }
  if (act === 'off') {
    return andThen(set(state, { name: 'pedals', value: {} }), (next) =>
      tell(next, words.settings.pedalsForgotten),
    );
  }
  return tell({ ...state, assigning: act ?? 'confirm' }, words.settings.pressNow(act ?? 'confirm'));
}

/** The switch that was pressed is to do this from now on. */
export function assign(state: BenchState, wanted: PedalAct, id: string): Reaction {
  const { settings, words } = state;
  const { pedals } = settings;
  if (reservedKeys.has(id)) return tell(state, words.settings.cannotAssign(id));
  const over = { ...state, assigning: null };
  if (id === 'escape') return tell(over, words.settings.pedalLeft);
  if (!(id in pedals) && Object.keys(pedals).length >= mostPedals) {
    return tell(over, words.settings.tooManyPedals(mostPedals));
  }
  return andThen(set(over, { name: 'pedals', value: { ...pedals, [id]: wanted } }), (next) =>
    tell(next, words.settings.assigned(id, wanted), ...sayPast([id], words), words.settings.cable),
  );
}

export function refuseSwitch(state: BenchState): Reaction {
  if (state.assigning === null) return only(state);
  return tell({ ...state, assigning: null }, state.words.settings.noPedalHere);
}

/** How to type a command that begins with a switch's letter; nothing where no switch types one. */
export function sayPast(keys: readonly string[], { settings }: Words): readonly string[] {
  const letters = keys.map((key) => key.replace(/^shift\+/, '')).filter((key) => [...key].length === 1);
  return letters.length === 0 ? [] : [settings.pastSwitches(letters)];
}

const tell = (state: BenchState, ...texts: readonly string[]): Reaction =>
  only(withLines(state, answer(...texts)));
