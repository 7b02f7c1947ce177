/** What the scales showed is left of the yarns, and what the bag has taken of them. */

import type { Session } from '../../session/session.ts';
import { type UsedYarn, usedYarn, type WeighFault } from '../../session/used-yarn.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { gramsPerOunce, type Units } from '../../shared/units.ts';
import type { Words } from '../../wording/words.ts';
import { labelled } from './page.ts';
import { sayYarn } from './yarns.ts';

/** Once a weighing is kept. */
export function sayWeighed(session: Session, yarn: string, words: Words): string {
  const used = usedYarn(session).find((one) => one.yarn === yarn);
  return used ? words.say`Weighed ${sayYarn(yarn, words)}: ${sayUsed(used, words)}.` : '';
}

/** A paragraph for each yarn that was weighed. */
export const weighedLines = (session: Session, words: Words): readonly string[] =>
  usedYarn(session).flatMap((used) => labelled(sayYarn(used.yarn, words), sayBeside(session, used, words)));

function sayBeside({ job }: Session, used: UsedYarn, words: Words): string {
  const planned = job.plan.yarn.find(({ yarn }) => yarn === used.yarn)?.grams ?? null;
  const parts = [
    sayUsed(used, words),
    ...(planned === null ? [] : [words.say`planned ${words.amounts.massNeeded(planned)}`]),
    ...(used.atEnd ? [] : [words.say`weighed after step ${used.done}`]),
  ];
  return parts.join('; ');
}

function sayUsed({ leftGrams, haveGrams, usedGrams }: UsedYarn, words: Words): string {
  const left = words.amounts.mass(leftGrams);
  if (haveGrams === null || usedGrams === null) return words.say`${left} left`;
  return words.say`${words.amounts.mass(usedGrams)} used, ${left} of ${words.amounts.mass(haveGrams)} left`;
}

export function formatWeighFault(fault: WeighFault, words: Words): string {
  switch (fault.code) {
    case 'weigh/no-such-yarn':
      return words.say`${fault.yarn} is not a yarn of this bag: it has ${words.amounts.list(fault.known.map((yarn) => sayYarn(yarn, words)))}.`;
    case 'weigh/not-a-weight':
      return words.say`${exactMass(fault.grams, words.units, words)} of ${sayYarn(fault.yarn, words)} cannot be weighed: give 0 or more.`;
    case 'weigh/more-than-before':
      return words.say`There were ${exactMass(fault.haveGrams, words.units, words)} of ${sayYarn(fault.yarn, words)} before the work, so ${exactMass(fault.grams, words.units, words)} cannot be left: weigh it once more.`;
    default:
      return exhaustive(fault);
  }
}

/** As near as kitchen scales show it, so that the two amounts are seen to differ. */
const exactMass = (grams: number, { mass }: Units, words: Words): string => {
  const [value, places] = mass === 'oz' ? [grams / gramsPerOunce, 100] : [grams, 10];
  return `${words.decimalText(String(Math.round(value * places) / places))} ${mass}`;
};
