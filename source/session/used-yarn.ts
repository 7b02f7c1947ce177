/**
 * What a bag has taken of a yarn: what there was before, less what the scales show is left. True of the moment of
 * weighing, so it is the bag's own figure once it is weighed at the end (common practice).
 */
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Session } from './session.ts';

export type WeighFault =
  | { readonly code: 'weigh/no-such-yarn'; readonly yarn: string; readonly known: readonly string[] }
  | { readonly code: 'weigh/not-a-weight'; readonly yarn: string; readonly grams: number }
  | {
      readonly code: 'weigh/more-than-before';
      readonly yarn: string;
      readonly grams: number;
      readonly haveGrams: number;
    };

/** The session with what is left of a yarn. A weighing takes the place of an earlier one, which may have been a slip. */
export function weighYarn(session: Session, yarn: string, grams: number): Result<Session, WeighFault> {
  const { yarns } = session.job.plan.brief;
  const known = yarns.get(yarn);
  if (!known) return fail({ code: 'weigh/no-such-yarn', yarn, known: [...yarns.keys()] });
  if (!(grams >= 0 && Number.isFinite(grams))) return fail({ code: 'weigh/not-a-weight', yarn, grams });
  if (known.grams !== null && grams > known.grams) {
    return fail({ code: 'weigh/more-than-before', yarn, grams, haveGrams: known.grams });
  }
  const weighed = new Map(session.weighed).set(yarn, { grams, done: session.done });
  return succeed({ ...session, weighed });
}

export interface UsedYarn {
  readonly yarn: string;
  readonly leftGrams: number;
  /** Before the work; null where it was not weighed. */
  readonly haveGrams: number | null;
  readonly usedGrams: number | null;
  /** Steps confirmed when what is left was weighed. */
  readonly done: number;
  /** The bag was finished by then, so nothing more was taken. */
  readonly atEnd: boolean;
}

/** One for each yarn that was weighed. */
export const usedYarn = ({ weighed, job }: Session): readonly UsedYarn[] =>
  [...weighed].map(([yarn, { grams, done }]) => {
    const haveGrams = job.plan.brief.yarns.get(yarn)?.grams ?? null;
    const usedGrams = haveGrams === null ? null : haveGrams - grams;
    return { yarn, leftGrams: grams, haveGrams, usedGrams, done, atEnd: done >= job.stepCount };
  });
