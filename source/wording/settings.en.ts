import type { Amounts } from './amounts.ts';

export const settings = (_: Amounts) => ({});

export type SettingsWords = ReturnType<typeof settings>;
