/** The size that was measured, beside the one that was planned. */
import type { MeasuredFault } from '../../session/measured-bag.ts';
import type { Session } from '../../session/session.ts';
import type { Units } from '../../shared/units.ts';
import { currentWords } from '../../wording/current.ts';
import { labelled } from './page.ts';

/** Once a size is kept; nothing where none was. */
export function sayMeasured({ measured, job }: Session, units: Units): readonly string[] {
  if (!measured) return [];
  const { measured: words, amounts } = currentWords(units);
  const { size } = job.plan;
  const beside = (side: 'width' | 'depth'): string => {
    const offCm = measured[`${side}Cm`] - size[`${side}Cm`];
    return amounts.length(Math.abs(offCm)) === amounts.length(0)
      ? words.asPlanned(side)
      : words.beside(side, offCm, size[`${side}UncertaintyCm`]);
  };
  return [words.got(measured.widthCm, measured.depthCm), beside('width'), beside('depth')];
}

/** The same as lines of a record. */
export const measuredLines = (session: Session, units: Units): readonly string[] =>
  sayMeasured(session, units).flatMap((line) => labelled('', line));

export const formatMeasuredFault = ({ widthCm, depthCm }: MeasuredFault, units: Units): string =>
  currentWords(units).measured.impossible(widthCm, depthCm);
