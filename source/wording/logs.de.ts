import type { Amounts } from './amounts.ts';
import type { LogsWords } from './logs.en.ts';

export const logs = (_: Amounts): LogsWords => ({
  soundPart: (path) => `Der brauchbare Teil ist gespeichert als ${path}.`,
});
