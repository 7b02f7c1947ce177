import type { Amounts } from './amounts.ts';
import type { ChatFaultsWords } from './chat-faults.en.ts';

export const chatFaults = (_: Amounts): ChatFaultsWords => ({});
