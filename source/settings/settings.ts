/** All settings as one table: name, what it is when nobody has set it, and what it may be. */
import { isGroup, type JsonGroup } from '../shared/result.ts';

export type PedalAct = 'confirm' | 'back' | 'again' | 'pass';

/** The languages that everything can be said in; `auto` follows the system. */
const languageCodes = ['en', 'de'] as const;
export type LanguageCode = (typeof languageCodes)[number];
export const languageChoices: readonly string[] = ['auto', ...languageCodes];

export interface Settings {
  readonly units: 'cm' | 'in';
  readonly language: string;
  readonly bell: boolean;
  readonly speech: boolean;
  readonly pause: 'short' | 'usual' | 'long';
  /** By key id, such as `b`, `f13` or `ctrl+alt+r`. */
  readonly pedals: Readonly<Record<string, PedalAct>>;
  readonly pedalGapMs: number;
  readonly large: boolean;
  readonly ascii: boolean;
}

/** How long a guarded step is there to be looked at before a press counts (rule of thumb). */
export const pauseMs: Readonly<Record<Settings['pause'], number>> = { short: 0, usual: 600, long: 1500 };

/** Why a press of a switch did nothing. */
export type Warning = 'too-soon' | 'no-pass-due';

/** As many foot switches as can be told apart with two feet and a row trip (rule of thumb). */
export const mostPedals = 3;

/** One setting and its new value. */
export type SettingChange = {
  readonly [Name in keyof Settings]: { readonly name: Name; readonly value: Settings[Name] };
}[keyof Settings];

interface Setting<Value> {
  readonly default: Value;
  readonly check: (value: unknown) => boolean;
}

const oneOf = <Value extends string>(...values: readonly Value[]) => ({
  check: (value: unknown): boolean => values.some((one) => one === value),
});

const yesOrNo = {
  check: (value: unknown): boolean => typeof value === 'boolean',
};

const pedalActs: readonly PedalAct[] = ['confirm', 'back', 'again', 'pass'];

const isPedals = (value: unknown): boolean =>
  isGroup(value) && Object.values(value).every((act) => pedalActs.some((one) => one === act));

/** Milliseconds in which presses of one switch count as one. */
export const pedalGap = { least: 20, most: 1000 };

export const isPedalGap = (value: unknown): boolean =>
  Number.isInteger(value) && Number(value) >= pedalGap.least && Number(value) <= pedalGap.most;

export const settingsTable: { readonly [Name in keyof Settings]: Setting<Settings[Name]> } = {
  units: { default: 'cm', ...oneOf('cm', 'in') },
  language: {
    default: 'auto',
    check: (value) => typeof value === 'string' && /^(auto|[a-z]{2})$/.test(value),
  },
  bell: { default: false, ...yesOrNo },
  speech: { default: false, ...yesOrNo },
  pause: { default: 'usual', ...oneOf('short', 'usual', 'long') },
  pedals: {
    default: {},
    check: isPedals,
  },
  pedalGapMs: {
    default: 100,
    check: isPedalGap,
  },
  large: { default: false, ...yesOrNo },
  /** Drawings and large letters in plain letters only. */
  ascii: { default: false, ...yesOrNo },
};

export type SettingName = keyof Settings;

export const settingNames = Object.keys(settingsTable) as readonly SettingName[];

export interface ReadSettings {
  readonly settings: Settings;
  /** Settings whose values may not be; they count as never set, and are left as they are in the file. */
  readonly refused: readonly SettingName[];
}

/** Settings from what a file holds. Names that are not in the table belong to other versions and are passed over. */
export function readSettings(stored: JsonGroup): ReadSettings {
  const given = settingNames.filter((name) => Object.hasOwn(stored, name));
  const refused = given.filter((name) => !settingsTable[name].check(stored[name]));
  const values = settingNames.map((name) => {
    const isSound = given.includes(name) && !refused.includes(name);
    return [name, isSound ? stored[name] : settingsTable[name].default];
  });
  return { settings: Object.fromEntries(values) as unknown as Settings, refused };
}
