import { readFileSync } from 'node:fs';
import { type BenchView, benchView } from '../../source/chat/view.ts';
import { startSession } from '../../source/session/session.ts';
import { jobOf } from '../fixtures/plan-of.ts';

/** The bench at one step of each kind of a whole bag, in the language that is spoken. */
export function stepsOfAllKinds(): readonly BenchView[] {
  const job = jobOf(readFileSync('demo/rulebook-bag.json', 'utf8'));
  return Array.from({ length: job.stepCount }, (_, done) => ({ ...startSession(job), done }))
    .map((session) => benchView(session))
    .filter((view, place, views) => views.findIndex(({ shout }) => shout === view.shout) === place);
}
