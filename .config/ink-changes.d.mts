import type { Plugin } from 'vitest/config';

export const inkChangesInTests: Plugin;
export const inkFiles: RegExp;
export const missingFrom: (bundle: string) => readonly string[];
export const changeNames: readonly string[];
