import type { Amounts } from './amounts.ts';
import type { PlanWords } from './plan.en.ts';

export const plan = ({ length }: Amounts): PlanWords => ({
  saves: 'spart eins',
  saving: ({ by, stitches, rows, shapeEveryRows, hangings, widthCm, depthCm }) => {
    const counts = `${rows} Reihen zu ${stitches} Maschen`;
    const choice = by === 'rarer-moves' ? `Formung alle ${shapeEveryRows} Reihen, ${counts}` : counts;
    return `${choice}: ${hangings}-mal eingehängt, ${length(widthCm)} mal ${length(depthCm)}`;
  },
});
