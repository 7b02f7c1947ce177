import type { Amounts } from './amounts.ts';
import type { MeasuredWords } from './measured.en.ts';

const sides = { width: 'Breite', depth: 'Tiefe' };

export const measured = ({ length }: Amounts): MeasuredWords => ({
  got: (widthCm, depthCm) => `Gemessen: ${length(widthCm)} breit, ${length(depthCm)} tief.`,
  asPlanned: (side) => `${sides[side]} wie geplant.`,
  beside: (side, offCm, doubtCm) =>
    `${sides[side]} ${length(Math.abs(offCm))} ${offCm > 0 ? 'mehr' : 'weniger'} als geplant, ${
      Math.abs(offCm) > doubtCm ? 'außerhalb' : 'innerhalb'
    } der ± ${length(doubtCm)} des Plans.`,
  impossible: (widthCm, depthCm) =>
    `Kein Beutel misst ${length(widthCm)} mal ${length(depthCm)}: tippe seine Breite und dann seine Tiefe, etwa measured 13,6 18.`,
});
