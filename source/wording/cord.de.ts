import type { Amounts } from './amounts.ts';
import type { CordWords } from './cord.en.ts';

export const cord = ({ length, lengthNeeded }: Amounts): CordWords => ({
  usage: 'cord LÄNGE',
  summary: 'wie lang die ersten Runden der Kordel sind: danach richtet sich ihr Rest',
  gist: 'die gemessene Kordel',
  planned: (rounds, left, lengthCm) =>
    left === 0
      ? `Das reicht für ${lengthNeeded(lengthCm)} Kordel.`
      : `${rounds} Runden ergeben ${lengthNeeded(lengthCm)}: noch ${left} zu stricken.`,
  notAsked: 'Die Kordel wird bei dem Schritt gemessen, der danach fragt, wenn 20 Runden gestrickt sind.',
  impossible: (lengthCm) =>
    `Runden einer Kordel sind nicht ${length(lengthCm)} lang: gib ihre Länge ein, etwa cord 7.4.`,
  notALength: (text, usage) => `${text} ist keine Länge. Zum Beispiel: ${usage}.`,
});
