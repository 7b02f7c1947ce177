/** What the plan page says of choices beside the one that was asked for. */
import type { NearShape } from '../planning/near-shapes.ts';
import type { Saving } from '../planning/savings.ts';
import type { Amounts } from './amounts.ts';

export const plan = ({ length }: Amounts) => ({
  saves: 'saves one',
  saving: ({ by, stitches, rows, shapeEveryRows, hangings, widthCm, depthCm }: Saving) => {
    const counts = `${rows} rows of ${stitches} stitches`;
    const choice = by === 'rarer-moves' ? `a move every ${shapeEveryRows} rows, ${counts}` : counts;
    return `${choice}: hung ${hangings === 1 ? 'once' : `${hangings} times`}, ${length(widthCm)} by ${length(depthCm)}`;
  },
  orElse: 'or else',
  nearShape: ({ stitches, rows, widthCm, depthCm, shapeShare, areaShare }: NearShape) => {
    const off = Math.max(1, Math.round(100 * Math.abs(shapeShare - 1)));
    const shape = `${off} % ${shapeShare < 1 ? 'shallower' : 'deeper'} in shape`;
    const more = `${Math.round(100 * (areaShare - 1))} % more bag`;
    return `${stitches} stitches and ${rows} rows, ${length(widthCm)} by ${length(depthCm)}: ${shape}, ${more}`;
  },
});

export type PlanWords = ReturnType<typeof plan>;
