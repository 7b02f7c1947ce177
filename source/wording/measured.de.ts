import type { Amounts } from './amounts.ts';
import type { MeasuredWords } from './measured.en.ts';

const sides = { width: 'Breite', depth: 'Tiefe' };

export const measured = ({ length, lengthNeeded }: Amounts): MeasuredWords => ({
  got: (widthCm, depthCm) => `Gemessen: ${length(widthCm)} breit, ${length(depthCm)} tief.`,
  asPlanned: (side) => `${sides[side]} wie geplant.`,
  beside: (side, offCm, doubtCm) =>
    `${sides[side]} ${length(Math.abs(offCm))} ${offCm > 0 ? 'mehr' : 'weniger'} als geplant, ${
      Math.abs(offCm) > doubtCm ? 'außerhalb' : 'innerhalb'
    } der ± ${length(doubtCm)} des Plans.`,
  impossible: (widthCm, depthCm) =>
    `Kein Beutel misst ${length(widthCm)} mal ${length(depthCm)}: tippe seine Breite und dann seine Tiefe, etwa measured 13,6 18.`,
  cord: {
    planned: (rounds, left, lengthCm) =>
      left === 0
        ? `Das reicht für ${lengthNeeded(lengthCm)} Kordel.`
        : `${rounds} Runden ergeben ${lengthNeeded(lengthCm)}: noch ${left} zu stricken.`,
    ofSecond: ' Die zweite Kordel braucht ebenso viele.',
    notAsked: 'Die Kordel wird bei dem Schritt gemessen, der danach fragt, wenn 20 Runden gestrickt sind.',
    impossible: (lengthCm) =>
      `Runden einer Kordel sind nicht ${length(lengthCm)} lang: gib ihre Länge ein, etwa cord 7.4.`,
    notALength: (text, usage) => `${text} ist keine Länge. Zum Beispiel: ${usage}.`,
  },
});
