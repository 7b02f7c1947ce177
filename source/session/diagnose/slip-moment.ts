/** When a slip was made: the steps it begins with, and how a maker tells where in the work it lies. */
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import { doneBeforeRow, doneBeforeShaping } from '../../steps/landmarks.ts';
import type { Step } from '../../steps/step.ts';
import { isShapingSlip, type Slip } from '../mend/slip.ts';

/** Where in the work a slip lies, as the maker can tell by following an edge down or counting stripes. */
export type SlipMoment =
  | { readonly by: 'move' | 'stripe' | 'row'; readonly number: number }
  /** Rows from the needles down to it. */
  | { readonly by: 'rows-down'; readonly number: number };

/** Steps confirmed before the first of the slips; those that only show now begin now. */
export function baseOf(job: Job, slips: readonly Slip[], done: number): number {
  return Math.min(done, ...slips.map((slip) => startOf(job, slip, done)));
}

function startOf(job: Job, slip: Slip, done: number): number {
  switch (slip.is) {
    case 'rows-too-many':
      return slip.step;
    case 'rows-too-few':
      return (passesUpTo(job, slip.step, slip.rows).at(-1) ?? slip.step) - 1;
    case 'row-in-other-yarn':
    case 'work-dropped':
      return slip.step - 1;
    case 'stripe-in-other-yarn':
    case 'yarns-swapped':
      return doneBeforeRow(job, job.plan.stripes[slip.stripe - 1]?.firstRow ?? 1);
    case 'rehang-missing':
    case 'rehang-shifted':
      return passOfRow(job, slip.row);
    case 'stitch-dropped':
    case 'carriage-wrong-side':
    case 'wrong-yarn-in-feeder':
      return done;
    default:
      return doneBeforeShaping(job, slip.move);
  }
}

/** Numbers of the last so many pass steps up to `step`, the newest first. */
export function passesUpTo(job: Job, step: number, count: number): readonly number[] {
  const found: number[] = [];
  for (let number = step; number > 0 && found.length < count; number--)
    if (isPass(stepAt(job, number))) found.push(number);
  return found;
}

export const isPass = ({ act }: Step): boolean => act.kind === 'pass' || act.kind === 'closing-pass';

/** The step that knits `row`. */
export function passOfRow(job: Job, row: number): number {
  let number = doneBeforeRow(job, row) + 1;
  while (number < job.stepCount && !isPass(stepAt(job, number))) number++;
  return number;
}

/** The steps of hanging again that follow a row, where they were forgotten. */
export const isUnhung = (slips: readonly Slip[], { act, phase, row }: Step): boolean =>
  rehangActs.has(act.kind) &&
  phase === 'stripes' &&
  slips.some((slip) => slip.is === 'rehang-missing' && slip.row === row);

/** What hanging the work again takes, from the waste yarn to the counter. */
const rehangActs: ReadonlySet<Step['act']['kind']> = new Set([
  'thread-waste',
  'waste-rows',
  'weights-off',
  'take-off',
  'set-needles-again',
  'rehang',
  'hang-weights',
  'release-waste',
]);

/** Rows of the bag knitted when a slip was made, its stripe and its shaping move. */
export function momentOf(
  job: Job,
  slip: Slip,
): { readonly row: number; readonly stripe: number; readonly move: number | null } {
  const rowOfSlip = (): number => {
    if ('move' in slip) return slip.move * job.plan.brief.shapeEveryRows;
    if ('step' in slip) return rowAt(job, slip.step ?? 0);
    if ('stripe' in slip) return job.plan.stripes[slip.stripe - 1]?.firstRow ?? 0;
    return 'row' in slip ? slip.row : 0;
  };
  const row: number = rowOfSlip();
  const stripe = 'stripe' in slip ? slip.stripe : (job.outline.stripeOfRow[Math.max(1, row)] ?? 0) + 1;
  return { row, stripe, move: isShapingSlip(slip) ? slip.move : null };
}

/** The edge that steps where a slip was made; null where both do, or none. */
const edgeOf: Readonly<Partial<Record<Slip['is'], 'leading' | 'trailing'>>> = {
  'increase-missing': 'leading',
  'increase-doubled': 'leading',
  'needle-left-out-of-work': 'leading',
  'decrease-missing': 'trailing',
  'decrease-doubled': 'trailing',
  'needle-left-working': 'trailing',
};

/** The edge that steps at a place where one of these slips was made. */
export function edgeAt(job: Job, slips: readonly Slip[], moment: SlipMoment | undefined, rows: number) {
  const slip = moment && slips.find((one) => isAt(job, one, moment, rows));
  return (slip && edgeOf[slip.is]) ?? null;
}

export function isAt(job: Job, slip: Slip, moment: SlipMoment, rowsMade: number): boolean {
  const at = momentOf(job, slip);
  switch (moment.by) {
    case 'move':
      return at.move === moment.number;
    case 'stripe':
      return at.stripe === moment.number;
    case 'row':
      return at.move === null && at.row === moment.number;
    case 'rows-down':
      return rowsMade - at.row === moment.number;
  }
}
