/**
 * Ways to set a slip right, each found by carrying it out on the bed that the slip has left. Back: what was done is undone,
 * newest first, until bed and fabric are as the plan has them at some place. Kept: the bed is brought to where the plan has it
 * now, and what will show is what then differs. Tools go in only while the carriage is at home (common practice).
 */
import type { Bed } from '../../bed/bed.ts';
import { reverseOf } from '../../bed/reverse-of.ts';
import { type Job, rowAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { type HandStep, handStep, type Mend } from '../mend/mend.ts';
import { withWeights } from '../rip-back/rip-back.ts';
import { sameFabric } from './fabric.ts';
import { keepIt } from './make-up.ts';
import { numbered, plannedRun } from './planned-run.ts';
import { sameBed } from './settle.ts';
import { isPass } from './slip-moment.ts';
import type { Made, Story } from './story.ts';

/** The best first; none where the slip is only one of reading. */
export function waysOut(job: Job, story: Story): readonly Mend[] {
  const kept = keepIt(job, story);
  const back = goBack(job, story);
  // Work that was to be hung again is held best by its waste rows.
  const isUnhung = back?.how === 'now' && story.slips.some(({ is }) => is === 'rehang-missing');
  if (kept?.how === 'now') return [isUnhung ? back : kept];
  return [back, kept].filter((mend) => mend !== null);
}

/** The last moment at which all was as the plan has it: how many moves had been made, and the place. */
function lastSound(job: Job, story: Story): { readonly made: number; readonly done: number } {
  const { beds, fabric } = plannedRun(job, story);
  for (let made = story.made.length; made > 0; made--) {
    const { bed, rows } = momentOf(story, made);
    for (let i = beds.length - 1; i >= 0; i--) {
      const planned = beds[i];
      if (planned?.rows !== rows || !sameBed(planned.bed, bed)) continue;
      if (sameFabric(story.fabric.slice(0, rows), fabric.slice(0, rows)))
        return { made, done: story.baseDone + i };
    }
  }
  return { made: 0, done: story.baseDone };
}

function momentOf({ made, bed, fabric }: Story, count: number): { readonly bed: Bed; readonly rows: number } {
  const next = made[count];
  return next ? { bed: next.before, rows: next.rows } : { bed, rows: fabric.length };
}

function goBack(job: Job, story: Story): Mend | null {
  const sound = lastSound(job, story);
  const undone = undoSteps(job, story, sound.made);
  const fallen = story.slips.some(({ is }) => is === 'work-dropped');
  const rips = undone.some(({ moves }) => moves.some((move) => 'undo' in move && move.undo === 'knit'));
  const since = rips || fallen ? null : plannedSince(job, sound.done, story.done);
  // Across a hanging the loops have moved: what hung before is not there to be pulled out.
  // To cross without knitting the yarn leaves the feeder first: that is not going back, but setting right.
  if (story.made.slice(sound.made).some(({ move }) => move.move === 'slip')) return null;
  const rehung = ({ move }: Made): boolean => move.move === 'take-off' || move.move === 'rehang';
  if (!fallen && story.made.slice(sound.made).some(rehung)) return null;
  const steps = [...undone, ...(since ?? [])];
  const thenDone = since ? story.done : sound.done;
  if (steps.length === 0) return null;
  const all = rips && !fallen ? withWeights(job, steps, thenDone, story.done) : steps;
  return { how: rips ? 'rip' : 'now', steps: all, thenDone, shows: [] };
}

/** Planned steps to do again after a slip was undone; null where a row is among them. */
function plannedSince(job: Job, from: number, through: number): readonly HandStep[] | null {
  const steps = numbered(job, from, through);
  return steps.some(isPass) || steps.length > 8 ? null : steps.map((step) => asPlanned(step));
}

const asPlanned = (step: Step): HandStep => handStep({ moves: step.moves, row: step.row, planned: step });

/** What was made from `keep` moves on, taken back, newest first: a row at a time, other moves by the step they belong to. */
function undoSteps(job: Job, story: Story, keep: number): readonly HandStep[] {
  const groups: Made[][] = [];
  for (const one of story.made.slice(keep).toReversed()) {
    const last = groups.at(-1)?.at(-1);
    const joins = last && last.step === one.step && !isRow(last) && !isRow(one) && !begins(one, last);
    if (joins) groups.at(-1)?.push(one);
    else groups.push([one]);
  }
  let left = story.made.length;
  return groups.map((group) => {
    left -= group.length;
    const before = group.at(-1)?.before;
    const counter = before?.counter ?? null;
    return handStep({
      moves: group.flatMap(({ before: bed, move }) => reverseOf(bed, move) ?? []),
      row: counter ?? rowAt(job, story.baseDone),
      setsCounter: counter !== null && group.some(turnsCounter),
      stands: story.made[left - 1]?.step ?? story.baseDone,
    });
  });
}

/** Each pass has turned the counter on, and it is turned back by hand. */
const turnsCounter = ({ move }: Made): boolean =>
  move.move === 'knit' || move.move === 'slip' || (move.move === 'take-off' && move.to !== undefined);

const isRow = ({ move }: Made): boolean => move.move === 'knit';

/** Two things with the tool at one step are two things to undo. */
const begins = (one: Made, later: Made): boolean =>
  one.move.move === 'rest' || (one.move.move === 'transfer' && later.move.move === 'work');
