/** What the plan page says of choices beside the one that was asked for. */
import type { Learned } from '../planning/brief.ts';
import type { Cost } from '../planning/cost.ts';
import type { NearShape } from '../planning/near-shapes.ts';
import type { Saving } from '../planning/savings.ts';
import type { Amounts } from './amounts.ts';

export const plan = ({ length, time, decimal, list }: Amounts) => {
  const percentOff = (factor: number, more: string, less: string): string =>
    `${decimal(100 * Math.abs(factor - 1), 1)} % ${factor < 1 ? less : more}`;
  return {
    learned: 'learned',
    toldByBags: ({ bags, setAside, widthFactor, depthFactor, spread }: Learned) => {
      const width = percentOff(widthFactor, 'wider', 'narrower');
      const depth = percentOff(depthFactor, 'deeper', 'shallower');
      const aside =
        setAside === 0
          ? ''
          : `; ${setAside === 1 ? 'one that lies' : `${setAside} that lie`} far off not counted`;
      return `${bags} bags of this swatch came out ${width} and ${depth} than it foretells, ± ${decimal(100 * spread, 1)} % from bag to bag${aside}; that is counted in`;
    },

    step: 'step',
    stepBesideDoubt: (stepCm: number, doubtCm: number) =>
      `a repeat makes ${length(stepCm)} of width; the doubt is ± ${length(doubtCm)}`,

    saves: 'saves one',
    saving: ({ by, stitches, rows, shapeEveryRows, hangings, widthCm, depthCm }: Saving) => {
      const counts = `${rows} rows of ${stitches} stitches`;
      const choice = by === 'rarer-moves' ? `a move every ${shapeEveryRows} rows, ${counts}` : counts;
      return `${choice}: hung ${hangings === 1 ? 'once' : `${hangings} times`}, ${length(widthCm)} by ${length(depthCm)}`;
    },
    time: 'time',
    onTheBench: (
      totalS: number,
      parts: readonly (readonly [phase: string, seconds: number])[],
      bags: number,
    ) => {
      const each = parts.map(([phase, seconds]) => `${phase} ${time(seconds)}`).join(', ');
      const pace =
        bags === 0
          ? 'a rule of thumb for each act'
          : `at the pace of ${bags === 1 ? 'your finished bag' : `your ${bags} finished bags`}`;
      return `about ${time(totalS)} on the bench: ${each}; ${pace}`;
    },
    timeLeft: (phase: string, phaseS: number, bagS: number, bags: number) =>
      `About ${time(phaseS)} to the end of the ${phase}, ${time(bagS)} to the end of the bag (${
        bags === 0 ? 'rule of thumb' : 'at the pace of your finished bags'
      }).`,

    cost: 'cost',
    costs: ({ yarn, unpriced, hours, work, total, currency }: Cost) => {
      const money = (amount: number): string =>
        `${amount.toFixed(2)}${currency === null ? '' : ` ${currency}`}`;
      const parts = [
        ...yarn.map((one) => `${one.yarn} ${money(one.cost)}`),
        ...(work === null ? [] : [`${time(3600 * hours)} ${money(work)}`]),
      ];
      const without = unpriced.length === 0 ? '' : `; no price for ${list(unpriced)}`;
      return `${money(total)}: ${parts.join(', ')}${without}`;
    },

    orElse: 'or else',
    nearShape: ({ stitches, rows, widthCm, depthCm, shapeShare, areaShare }: NearShape) => {
      const off = Math.max(1, Math.round(100 * Math.abs(shapeShare - 1)));
      const shape = `${off} % ${shapeShare < 1 ? 'shallower' : 'deeper'} in shape`;
      const more = `${Math.round(100 * (areaShare - 1))} % more bag`;
      return `${stitches} stitches and ${rows} rows, ${length(widthCm)} by ${length(depthCm)}: ${shape}, ${more}`;
    },
  };
};

export type PlanWords = ReturnType<typeof plan>;
