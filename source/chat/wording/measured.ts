/** The size that was measured, beside the one that was planned. */

import type { MeasuredFault } from '../../session/measured-bag.ts';
import type { Session } from '../../session/session.ts';
import type { Words } from '../../wording/words.ts';
import { labelled } from './page.ts';

/** Once a size is kept; nothing where none was. */
export function sayMeasured({ measured, job }: Session, words: Words): readonly string[] {
  if (!measured) return [];
  const { measured: say, amounts } = words;
  const { size } = job.plan;
  const beside = (side: 'width' | 'depth'): string => {
    const offCm = measured[`${side}Cm`] - size[`${side}Cm`];
    return amounts.length(Math.abs(offCm)) === amounts.length(0)
      ? say.asPlanned(side)
      : say.beside(side, offCm, size[`${side}UncertaintyCm`]);
  };
  return [say.got(measured.widthCm, measured.depthCm), beside('width'), beside('depth')];
}

/** The same as lines of a record. */
export const measuredLines = (session: Session, words: Words): readonly string[] =>
  sayMeasured(session, words).flatMap((line) => labelled('', line));

export const formatMeasuredFault = ({ widthCm, depthCm }: MeasuredFault, words: Words): string =>
  words.measured.impossible(widthCm, depthCm);
