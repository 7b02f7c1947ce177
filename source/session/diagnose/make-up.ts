/**
 * A slip that is kept: the bed is brought to where the plan has it now, and what will show is what then differs. Tools go in only
 * while the carriage is at home (common practice).
 */
import type { Bed } from '../../bed/bed.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import { rehangsAfter } from '../../steps/outline.ts';
import type { Step } from '../../steps/step.ts';
import { applyMends, type HandStep, handStep, type Mend, type MendMove } from '../mend/mend.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { type FabricRow, tracesIn } from './fabric.ts';
import { plannedMoves } from './hands.ts';
import { hungRight } from './hung-aside.ts';
import { knitOn, numbered, plannedRun } from './planned-run.ts';
import { hangAgain, sameBed, settleEdges, settleYarns } from './settle.ts';
import { isPass } from './slip-moment.ts';
import type { Story } from './story.ts';
import { withoutStray } from './without-stray.ts';

/** The bed brought to where the plan has it; null where that cannot be done from here. */
export function keepIt(job: Job, story: Story): Mend | null {
  if (story.slips.some(({ is }) => is === 'work-dropped' || is === 'stitch-dropped')) return null;
  const { done } = story;
  if (done === 0 || stepAt(job, done).phase !== 'stripes') return null;
  const stray = withoutStray(story);
  const drop = stray && handStep({ moves: [{ undo: 'stray', needle: stray.needle }], row: rowAt(job, done) });
  return (stray && drop && bringOn(job, stray.story, [drop])) ?? bringOn(job, story, []);
}

/** The bed of a story brought on to the plan's; what was `begun` with is done in it. */
function bringOn(job: Job, story: Story, begun: readonly HandStep[]): Mend | null {
  const { done } = story;
  const planned = bedAtPlace(job, done);
  const steps: HandStep[] = [...begun];
  let { bed } = story;
  const make = (moves: readonly MendMove[], row: number, step: Step | null = null): boolean => {
    if (moves.length === 0) return true;
    const next = applyMends(bed, moves);
    if (!next.ok) return false;
    bed = next.value;
    steps.push(handStep({ moves, row, planned: step }));
    return true;
  };
  const row = rowAt(job, done);
  const crosses = story.bed.carriage !== planned.carriage;
  if (crosses && job.plan.brief.bed.without.includes('slip')) return null;
  if (!make(settleYarns(bed, planned), row)) return null;
  let there = done;
  let hungAgain = false;
  if (!patternsAgree(bed, planned)) {
    const isHungAmiss = story.slips.some(({ is }) => is.startsWith('rehang'));
    const reaches = isHungAmiss ? singlesReach(job, done, bed) : toolsReach(job, done);
    if (reaches === null) return null;
    for (const step of numbered(job, done, reaches)) if (!make(step.moves, step.row, step)) return null;
    there = reaches;
    const now = bedAtPlace(job, there);
    const again = isHungAmiss ? hangAgain(bed, now) : null;
    hungAgain = again !== null;
    const parts = again
      ? [again]
      : rehangsAfter(job.outline, rowAt(job, there))
        ? null
        : settleEdges(bed, now, job.plan.brief);
    if (!parts?.every((part) => make(part, rowAt(job, there)))) return null;
  }
  const counter = bedAtPlace(job, there).counter;
  if (counter !== null && bed.counter !== counter) {
    const last = steps.at(-1);
    if (last && !last.planned) steps[steps.length - 1] = { ...last, setsCounter: true, row: counter };
    else steps.push(handStep({ moves: [], row: counter, setsCounter: true }));
  }
  const shows = proven(job, story, { steps, bed, there, hungAgain });
  if (!shows) return null;
  const sameYarn = story.fabric.at(-1)?.yarn === planned.feeder;
  const all = crosses && sameYarn && shows.length > 0 ? [...shows, 'strand-across' as const] : shows;
  if (steps.length === 0 && all.length === 0) return null;
  return { how: all.length === 0 && there === done ? 'now' : 'make-up', steps, thenDone: there, shows: all };
}

/** Needles that work and hold alike, whatever the yarn. */
const patternsAgree = (one: Bed, other: Bed): boolean =>
  one.needles.every(
    ({ working, loopCount }, place) =>
      working === other.needles[place]?.working && loopCount === other.needles[place]?.loopCount,
  );

/** Steps confirmed when the carriage is next at home, at most a row on; null where the work is off before, or closed. */
function toolsReach(job: Job, done: number): number | null {
  for (let there = done; there <= done + 2 && there < job.stepCount; there++) {
    const step = stepAt(job, there);
    if (step.phase !== 'stripes' || step.row >= job.plan.knittedRows) return null;
    if (there > done && !isPass(step) && step.act.kind !== 'thread') return null;
    if (step.after.carriage === job.plan.brief.homeSide && step.after.feeder !== job.plan.brief.waste.yarn)
      return there;
  }
  return null;
}

/** Steps confirmed when each needle holds one loop, so that all can move together: now, or after the next row. */
function singlesReach(job: Job, done: number, bed: Bed): number | null {
  if (bed.needles.every(({ loopCount, working }) => loopCount < 2 && working === loopCount > 0)) return done;
  const next = nextRow(job, done);
  return next.length === 0 || next.some(({ act }) => act.kind === 'decrease') ? null : done + next.length;
}

interface BroughtOn {
  readonly steps: readonly HandStep[];
  readonly bed: Bed;
  readonly there: number;
  /** All loops were hung right in the end. */
  readonly hungAgain: boolean;
}

/** What will show, once the next row is knitted over the mend; null where the bed is not the plan's by then. */
function proven(job: Job, story: Story, { steps, bed, there, hungAgain }: BroughtOn): Mend['shows'] | null {
  const next = nextRow(job, there);
  const after = knitOn(bed, next.flatMap(plannedMoves));
  const planned = knitOn(bedAtPlace(job, there), next.flatMap(plannedMoves));
  if (!after || !planned || !sameBed(after.bed, planned.bed)) return null;
  const mended = knitOn(
    story.bed,
    steps.flatMap(({ moves }) => moves),
  );
  if (!mended) return null;
  const through = plannedRun(job, { ...story, done: there });
  const made = [
    ...hungRight(job, story, hungAgain ? mended.fabric : null),
    ...(hungAgain ? [] : mended.fabric),
    ...after.fabric,
  ];
  const due = [...through.fabric, ...planned.fabric];
  const { yarns } = job.plan.brief;
  const ofBag = (rows: readonly FabricRow[]) => rows.filter(({ yarn }) => yarns.has(yarn));
  return tracesIn(ofBag(made), ofBag(due), job.plan.brief.crawl);
}

/** The planned steps through the next row of the bag. */
function nextRow(job: Job, done: number): readonly Step[] {
  let through = done + 1;
  while (through < job.stepCount && !isPass(stepAt(job, through))) through++;
  const steps = numbered(job, done, through);
  return steps.some(({ act }) => act.kind === 'take-off' || act.kind === 'thread-waste') ? [] : steps;
}
