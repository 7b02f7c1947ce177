import { readFileSync } from 'node:fs';
import { type BenchView, benchView } from '../../source/chat/view.ts';
import { startSession } from '../../source/session/session.ts';
import { jobOf } from '../fixtures/plan-of.ts';

export const demoBags = [
  'dice-bag',
  'card-box-bag',
  'leftovers-bag',
  'marble-bag',
  'rulebook-bag',
  'token-pouch',
];

export const demoJob = (bag: string) => jobOf(readFileSync(`demo/${bag}.json`, 'utf8'));

/** The bench before each step of a job, and once it is finished. */
export const allViews = (job: ReturnType<typeof jobOf>): readonly BenchView[] =>
  Array.from({ length: job.stepCount + 1 }, (_, done) => benchView({ ...startSession(job), done }));

/** The bench at one step of each kind of a whole bag, and at its end. */
export function stepsOfAllKinds(bag = 'rulebook-bag'): readonly BenchView[] {
  const kinds = new Map<string, BenchView>();
  for (const view of allViews(demoJob(bag))) {
    const kind = view.step?.act.kind ?? 'finished';
    if (!kinds.has(kind)) kinds.set(kind, view);
  }
  return [...kinds.values()];
}
