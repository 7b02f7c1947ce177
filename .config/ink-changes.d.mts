import type { Plugin as BuildPlugin } from 'esbuild';
import type { Plugin } from 'vitest/config';

export const inkChanges: BuildPlugin;
export const inkChangesInTests: Plugin & { transform(text: string, path: string): unknown };
export const inkFiles: RegExp;
export const missingFrom: (bundle: string) => readonly string[];
export const changeNames: readonly string[];
