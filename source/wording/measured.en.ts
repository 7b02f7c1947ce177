import type { Amounts } from './amounts.ts';

const sides = { width: 'Width', depth: 'Depth' };

export const measured = ({ length }: Amounts) => ({
  got: (widthCm: number, depthCm: number) => `Measured: ${length(widthCm)} wide, ${length(depthCm)} deep.`,
  asPlanned: (side: 'width' | 'depth') => `${sides[side]} as planned.`,
  beside: (side: 'width' | 'depth', offCm: number, doubtCm: number) =>
    `${sides[side]} ${length(Math.abs(offCm))} ${offCm > 0 ? 'more' : 'less'} than planned, ${
      Math.abs(offCm) > doubtCm ? 'beyond' : 'within'
    } the ± ${length(doubtCm)} of the plan.`,
  impossible: (widthCm: number, depthCm: number) =>
    `No bag is ${length(widthCm)} by ${length(depthCm)}: type its width and then its depth, as in measured 13.6 18.`,
});

export type MeasuredWords = ReturnType<typeof measured>;
