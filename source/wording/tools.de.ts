import type { Amounts } from './amounts.ts';
import type { ToolsWords } from './tools.en.ts';

export const tools = (_: Amounts): ToolsWords => ({});
