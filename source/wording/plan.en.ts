/** What the plan page says of choices beside the one that was asked for. */
import type { Saving } from '../planning/savings.ts';
import type { Amounts } from './amounts.ts';

export const plan = ({ length }: Amounts) => ({
  saves: 'saves one',
  saving: ({ by, stitches, rows, shapeEveryRows, hangings, widthCm, depthCm }: Saving) => {
    const counts = `${rows} rows of ${stitches} stitches`;
    const choice = by === 'rarer-moves' ? `a move every ${shapeEveryRows} rows, ${counts}` : counts;
    return `${choice}: hung ${hangings === 1 ? 'once' : `${hangings} times`}, ${length(widthCm)} by ${length(depthCm)}`;
  },
});

export type PlanWords = ReturnType<typeof plan>;
