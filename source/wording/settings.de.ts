import type { Amounts } from './amounts.ts';
import type { SettingsWords } from './settings.en.ts';

export const settings = (_: Amounts): SettingsWords => ({});
