/** What pulls at the work, and is told of before rows come out and once they have. */
import type { Act } from '../../steps/act.ts';
import { type Job, stepAt } from '../../steps/job.ts';

type Weights = 'comb' | 'claws' | null;

const hungBy: Readonly<Partial<Record<Act['kind'], Weights>>> = {
  'hang-comb': 'comb',
  'comb-off': 'claws',
  'hang-weights': 'claws',
  'move-weights': 'claws',
  'weights-off': null,
};

/** By the last step that hung something or took it off. */
export function weightsAt(job: Job, done: number): Weights {
  for (let number = done; number > 0; number--) {
    const hung = hungBy[stepAt(job, number).act.kind];
    if (hung !== undefined) return hung;
  }
  return null;
}
