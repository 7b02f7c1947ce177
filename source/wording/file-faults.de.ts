import type { Amounts } from './amounts.ts';
import type { FileFaultsWords } from './file-faults.en.ts';

export const fileFaults = (_: Amounts): FileFaultsWords => ({});
