/**
 * Ways to set a slip right, each found by carrying it out on the bed that the slip has left. Back: what was done is undone,
 * newest first, until bed and fabric are as the plan has them at some place. Kept: the bed is brought to where the plan has it
 * now, and what will show is what then differs. Tools go in only while the carriage is at home (common practice).
 */
import type { Bed } from '../../bed/bed.ts';
import { reverseOf } from '../../bed/reverse-of.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import { rehangsAfter } from '../../steps/outline.ts';
import type { Step } from '../../steps/step.ts';
import { applyMends, type HandStep, handStep, type Mend, type MendMove } from '../mend/mend.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { type FabricRow, fabricRow, sameFabric, tracesIn } from './fabric.ts';
import { hangAgain, sameBed, sameNeedles, settleEdges, settleYarns } from './settle.ts';
import { isPass, type Made, plannedMoves, type Story } from './story.ts';

/** The best first; none where the slip is only one of reading. */
export function waysOut(job: Job, story: Story): readonly Mend[] {
  const kept = keepIt(job, story);
  if (kept?.how === 'now') return [kept];
  return [goBack(job, story), kept].filter((mend) => mend !== null);
}

interface Planned {
  readonly bed: Bed;
  readonly rows: number;
}

/** The planned beds from where the story begins to where it ends, and the fabric of them. */
function plannedRun(
  job: Job,
  { baseDone, done }: Story,
): { beds: readonly Planned[]; fabric: readonly FabricRow[] } {
  const beds: Planned[] = [{ bed: bedAtPlace(job, baseDone), rows: 0 }];
  const fabric: FabricRow[] = [];
  let bed = beds[0]?.bed as Bed;
  for (let number = baseDone + 1; number <= done; number++) {
    const made = knitOn(bed, plannedMoves(stepAt(job, number)));
    if (!made) break;
    bed = made.bed;
    fabric.push(...made.fabric);
    beds.push({ bed, rows: fabric.length });
  }
  return { beds, fabric };
}

function knitOn(
  start: Bed,
  moves: readonly MendMove[],
): { readonly bed: Bed; readonly fabric: readonly FabricRow[] } | null {
  const fabric: FabricRow[] = [];
  let bed = start;
  for (const move of moves) {
    if ('move' in move && move.move === 'knit') fabric.push(fabricRow(bed, bed.feeder ?? ''));
    const next = applyMends(bed, [move]);
    if (!next.ok) return null;
    bed = next.value;
  }
  return { bed, fabric };
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
  return { how: rips ? 'rip' : 'now', steps, thenDone, shows: [] };
}

/** Planned steps to do again after a slip was undone; null where a row is among them. */
function plannedSince(job: Job, from: number, through: number): readonly HandStep[] | null {
  const steps = numbered(job, from, through);
  return steps.some(isPass) || steps.length > 8 ? null : steps.map((step) => asPlanned(step));
}

const numbered = (job: Job, from: number, through: number): readonly Step[] =>
  Array.from({ length: Math.max(0, through - from) }, (_, i) => stepAt(job, from + 1 + i));

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
  return groups.map((group) => {
    const before = group.at(-1)?.before;
    const counter = before?.counter ?? null;
    return handStep({
      moves: group.flatMap(({ before: bed, move }) => reverseOf(bed, move) ?? []),
      row: counter ?? rowAt(job, story.baseDone),
      setsCounter: counter !== null && group.some(turnsCounter),
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

/** The bed brought to where the plan has it; null where that cannot be done from here. */
function keepIt(job: Job, story: Story): Mend | null {
  if (story.slips.some(({ is }) => is === 'work-dropped' || is === 'stitch-dropped')) return null;
  const { done } = story;
  if (done === 0 || stepAt(job, done).phase !== 'stripes') return null;
  const stray = dropStray(job, story);
  if (stray) return stray;
  const planned = bedAtPlace(job, done);
  const steps: HandStep[] = [];
  let bed = story.bed;
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
  if (!patternsAgree(bed, planned)) {
    const isHungAmiss = story.slips.some(({ is }) => is.startsWith('rehang'));
    const reaches = isHungAmiss ? singlesReach(job, done, bed) : toolsReach(job, done);
    if (reaches === null) return null;
    for (const step of numbered(job, done, reaches)) if (!make(step.moves, step.row, step)) return null;
    there = reaches;
    const now = bedAtPlace(job, there);
    const again = isHungAmiss ? hangAgain(bed, now) : null;
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
  const shows = proven(job, story, steps, bed, there);
  if (!shows) return null;
  const sameYarn = story.fabric.at(-1)?.yarn === planned.feeder;
  const all = crosses && sameYarn && shows.length > 0 ? [...shows, 'strand-across' as const] : shows;
  if (steps.length === 0 && all.length === 0) return null;
  return { how: all.length === 0 && there === done ? 'now' : 'make-up', steps, thenDone: there, shows: all };
}

/** A loop that began on nothing, on its own needle at the edge: dropped, it leaves nothing. */
function dropStray(job: Job, story: Story): Mend | null {
  const { looks, bed, done } = story;
  const needle = looks.looseEdgeLoop ? looks[job.plan.brief.crawl === 'left' ? 'right' : 'left'] : null;
  const moves = needle ? [{ undo: 'stray', needle } as const] : [];
  const after = applyMends(bed, moves);
  if (moves.length === 0 || !after.ok || !sameBed(after.value, bedAtPlace(job, done))) return null;
  const step = handStep({ moves, row: rowAt(job, done) });
  return { how: 'now', steps: [step], thenDone: done, shows: [] };
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

/** What will show, once the next row is knitted over the mend; null where the bed is not the plan's by then. */
function proven(
  job: Job,
  story: Story,
  steps: readonly HandStep[],
  bed: Bed,
  there: number,
): Mend['shows'] | null {
  const next = nextRow(job, there);
  const after = bed && knitOn(bed, next.flatMap(plannedMoves));
  const planned = knitOn(bedAtPlace(job, there), next.flatMap(plannedMoves));
  if (!after || !planned || !sameBed(after.bed, planned.bed) || !sameNeedles(after.bed, planned.bed))
    return null;
  const mended = knitOn(
    story.bed,
    steps.flatMap(({ moves }) => moves),
  );
  if (!mended) return null;
  const through = plannedRun(job, { ...story, done: there });
  const made = [...story.fabric, ...mended.fabric, ...after.fabric];
  const due = [...through.fabric, ...planned.fabric];
  return tracesIn(alignedTo(due, made, story), due, job.plan.brief.crawl);
}

/** Rows knitted where the work hung aside are the same rows. */
function alignedTo(
  due: readonly FabricRow[],
  made: readonly FabricRow[],
  story: Story,
): readonly FabricRow[] {
  if (!story.slips.every(({ is }) => is.startsWith('rehang'))) return made;
  return made.map((row, i) => {
    const by = (due[i]?.left ?? row.left) - row.left;
    return { ...row, left: row.left + by, right: row.right + by, holes: row.holes.map((hole) => hole + by) };
  });
}

/** The planned steps through the next row of the bag. */
function nextRow(job: Job, done: number): readonly Step[] {
  let through = done + 1;
  while (through < job.stepCount && !isPass(stepAt(job, through))) through++;
  const steps = numbered(job, done, through);
  return steps.some(({ act }) => act.kind === 'take-off' || act.kind === 'thread-waste') ? [] : steps;
}
