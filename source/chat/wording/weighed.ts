/** What the scales showed is left of the yarns, and what the bag has taken of them. */
import type { Session } from '../../session/session.ts';
import { type UsedYarn, usedYarn, type WeighFault } from '../../session/used-yarn.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { formatDecimal, formatList, say } from '../../shared/say.ts';
import { formatMass, formatMassNeeded, gramsPerOunce, type Units } from '../../shared/units.ts';
import { labelled } from './page.ts';
import { sayYarn } from './yarns.ts';

/** Once a weighing is kept. */
export function sayWeighed(session: Session, yarn: string, units: Units): string {
  const used = usedYarn(session).find((one) => one.yarn === yarn);
  return used ? say`Weighed ${sayYarn(yarn)}: ${sayUsed(used, units)}.` : '';
}

/** A paragraph for each yarn that was weighed. */
export const weighedLines = (session: Session, units: Units): readonly string[] =>
  usedYarn(session).flatMap((used) => labelled(sayYarn(used.yarn), sayBeside(session, used, units)));

function sayBeside({ job }: Session, used: UsedYarn, units: Units): string {
  const planned = job.plan.yarn.find(({ yarn }) => yarn === used.yarn)?.grams ?? null;
  const parts = [
    sayUsed(used, units),
    ...(planned === null ? [] : [say`planned ${formatMassNeeded(planned, units)}`]),
    ...(used.atEnd ? [] : [say`weighed after step ${used.done}`]),
  ];
  return parts.join('; ');
}

function sayUsed({ leftGrams, haveGrams, usedGrams }: UsedYarn, units: Units): string {
  const left = formatMass(leftGrams, units);
  if (haveGrams === null || usedGrams === null) return say`${left} left`;
  return say`${formatMass(usedGrams, units)} used, ${left} of ${formatMass(haveGrams, units)} left`;
}

export function formatWeighFault(fault: WeighFault, units: Units): string {
  switch (fault.code) {
    case 'weigh/no-such-yarn':
      return say`${fault.yarn} is not a yarn of this bag: it has ${formatList(fault.known.map(sayYarn))}.`;
    case 'weigh/not-a-weight':
      return say`${exactMass(fault.grams, units)} of ${sayYarn(fault.yarn)} cannot be weighed: give 0 or more.`;
    case 'weigh/more-than-before':
      return say`There were ${exactMass(fault.haveGrams, units)} of ${sayYarn(fault.yarn)} before the work, so ${exactMass(fault.grams, units)} cannot be left: weigh it once more.`;
    default:
      return exhaustive(fault);
  }
}

/** As near as kitchen scales show it, so that the two amounts are seen to differ. */
const exactMass = (grams: number, { mass }: Units): string => {
  const [value, places] = mass === 'oz' ? [grams / gramsPerOunce, 100] : [grams, 10];
  return `${formatDecimal(String(Math.round(value * places) / places))} ${mass}`;
};
