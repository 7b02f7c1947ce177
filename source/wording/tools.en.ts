import type { Amounts } from './amounts.ts';

export const tools = (_: Amounts) => ({});

export type ToolsWords = ReturnType<typeof tools>;
