/** The cord once its first rounds have been measured. */

import type { MeasureCordFault } from '../../session/measure-cord.ts';
import { currentStep, type Session } from '../../session/session.ts';
import type { Words } from '../../wording/words.ts';

/** How many rounds it takes in all, and how many of them are still to be knitted. */
export function sayCord(session: Session, words: Words): string {
  const { cord } = session.job.plan;
  const act = currentStep(session)?.act;
  const knitted = act?.kind === 'measure-rounds' ? act.rounds : cord.rounds;
  return words.measured.cord.planned(cord.rounds, cord.rounds - knitted, cord.lengthCm);
}

export const formatCordFault = (fault: MeasureCordFault, words: Words): string => {
  const { cord } = words.measured;
  return fault.code === 'cord/not-asked' ? cord.notAsked : cord.impossible(fault.lengthCm);
};
