import type { Amounts } from './amounts.ts';
import type { PlanWords } from './plan.en.ts';

export const plan = ({ length, time, decimal, list }: Amounts): PlanWords => {
  const percentOff = (factor: number, more: string, less: string): string =>
    `${decimal(100 * Math.abs(factor - 1), 1)} % ${factor < 1 ? less : more}`;
  return {
    learned: 'gelernt',
    toldByBags: ({ bags, setAside, widthFactor, depthFactor, spread }) => {
      const width = percentOff(widthFactor, 'breiter', 'schmaler');
      const depth = percentOff(depthFactor, 'tiefer', 'flacher');
      const aside =
        setAside === 0
          ? ''
          : `; ${setAside === 1 ? 'einer, der weit abliegt, zählt' : `${setAside}, die weit abliegen, zählen`} nicht`;
      return `${bags} Beutel dieser Maschenprobe wurden ${width} und ${depth}, als sie vorhersagt, ± ${decimal(100 * spread, 1)} % von Beutel zu Beutel${aside}; das ist eingerechnet`;
    },

    step: 'Sprung',
    stepBesideDoubt: (stepCm, doubtCm) =>
      `ein Rapport macht ${length(stepCm)} Breite; die Unsicherheit ist ± ${length(doubtCm)}`,

    saves: 'spart eins',
    saving: ({ by, stitches, rows, shapeEveryRows, hangings, widthCm, depthCm }) => {
      const counts = `${rows} Reihen zu ${stitches} Maschen`;
      const choice = by === 'rarer-moves' ? `Formung alle ${shapeEveryRows} Reihen, ${counts}` : counts;
      return `${choice}: ${hangings}-mal eingehängt, ${length(widthCm)} mal ${length(depthCm)}`;
    },

    time: 'Zeit',
    onTheBench: (totalS, parts, bags) => {
      const each = parts.map(([phase, seconds]) => `${phase} ${time(seconds)}`).join(', ');
      const pace =
        bags === 0
          ? 'eine Faustregel für jeden Handgriff'
          : `im Tempo ${bags === 1 ? 'deines fertigen Beutels' : `deiner ${bags} fertigen Beutel`}`;
      return `etwa ${time(totalS)} an der Maschine: ${each}; ${pace}`;
    },
    timeLeft: (phase, phaseS, bagS, bags) =>
      `Etwa ${time(phaseS)} bis zum Ende dieses Teils (${phase}), ${time(bagS)} bis zum Ende des Beutels (${
        bags === 0 ? 'Faustregel' : 'im Tempo deiner fertigen Beutel'
      }).`,

    cost: 'Kosten',
    costs: ({ yarn, unpriced, hours, work, total, currency }) => {
      const money = (amount: number): string =>
        `${amount.toFixed(2).replace('.', ',')}${currency === null ? '' : ` ${currency}`}`;
      const parts = [
        ...yarn.map((one) => `${one.yarn} ${money(one.cost)}`),
        ...(work === null ? [] : [`${time(3600 * hours)} ${money(work)}`]),
      ];
      const without = unpriced.length === 0 ? '' : `; ohne Preis: ${list(unpriced)}`;
      return `${money(total)}: ${parts.join(', ')}${without}`;
    },

    orElse: 'oder',
    nearShape: ({ stitches, rows, widthCm, depthCm, shapeShare, areaShare }) => {
      const off = Math.max(1, Math.round(100 * Math.abs(shapeShare - 1)));
      const shape = `${off} % ${shapeShare < 1 ? 'flacher' : 'tiefer'} in der Form`;
      const more = `${Math.round(100 * (areaShare - 1))} % mehr Beutel`;
      return `${stitches} Maschen und ${rows} Reihen, ${length(widthCm)} mal ${length(depthCm)}: ${shape}, ${more}`;
    },
  };
};
