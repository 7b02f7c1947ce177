/**
 * The stripe repeats. Each row brings, in this order: its yarn into the feeder, the pass, a rehang where the bed runs
 * out, the increase at the leading edge, the decrease at the trailing edge, a reminder to move the weights. Tools go in
 * only while the carriage waits at home, clear of the needles.
 */
import { opposite, type Side } from '../bed/bed.ts';
import { edgesAt, shapingsBefore } from '../planning/hangings.ts';
import { bedAt, bedBeforePass, carriageAfter, hangingOf, parkedDuring } from './bed-after.ts';
import {
  combHangs,
  type Outline,
  partsOfRow,
  rehangSteps,
  rehangsAfter,
  rowAtStep,
  stripeNumberOf,
  yarnOfRow,
} from './outline.ts';
import { asideAfter, asideMoves, rehangStep } from './rehang.ts';
import type { StepBody } from './step.ts';

const none: readonly string[] = [];

export const countStripes = ({ rowStart, plan }: Outline): number => rowStart[plan.knittedRows] ?? 0;

export function stripesStep(outline: Outline, local: number): StepBody {
  const row = rowAtStep(outline, local);
  const parts = partsOfRow(outline, row);
  let part = local - (outline.rowStart[row] ?? 0);
  if (parts.threads && part-- === 0) return threadStep(outline, row);
  if (part-- === 0) return passStep(outline, row);
  if (parts.rehangs) {
    if (part < rehangSteps) return rehangStep(outline, row, part);
    part -= rehangSteps;
  }
  if (parts.shapes) {
    if (part-- === 0) return increaseStep(outline, row);
    if (part-- === 0) return decreaseStep(outline, row);
  }
  return moveWeightsStep(outline, row);
}

/** The yarn of `row` goes into the feeder; the one before it is set aside, unless a rehang has done so. */
export function threadStep(outline: Outline, row: number): StepBody {
  const yarn = yarnOfRow(outline, row);
  const aside = row === 1 || rehangsAfter(outline, row - 1) ? null : asideAfter(outline, row - 1);
  const waitsAt = parkedDuring(outline, row - 1, null).get(yarn) ?? null;
  return {
    row: row - 1,
    stripe: stripeNumberOf(outline, row),
    act: { kind: 'thread', yarn, aside, waitsAt },
    moves: [...asideMoves(aside), { move: 'feed', yarn }],
    after: bedBeforePass(outline, row, true),
  };
}

export function passStep(outline: Outline, row: number): StepBody {
  const { plan } = outline;
  const to = carriageAfter(outline, row);
  const yarn = yarnOfRow(outline, row);
  const stripe = plan.stripes[outline.stripeOfRow[row] ?? 0];
  const closing = row === plan.knittedRows;
  return {
    row,
    stripe: stripeNumberOf(outline, row),
    act: closing
      ? { kind: 'closing-pass', yarn, to }
      : {
          kind: 'pass',
          yarn,
          to,
          rowInStripe: row - (stripe?.firstRow ?? 1) + 1,
          stripeRows: stripe?.rows ?? 0,
          crosses: outline.crossings.get(row) ?? none,
          rowInAll: plan.brief.bed.without.includes('counter') ? row : null,
        },
    moves: [{ move: 'knit', to }],
    after: bedAt(outline, {
      hanging: hangingOf(outline, row),
      row,
      shapings: shapingsBefore(row, plan.brief.shapeEveryRows),
      feeder: yarn,
      parked: parkedDuring(outline, row, yarn),
    }),
  };
}

/** Names of `count` needles inward from the `side` edge, outermost first, set off by `shift` needles outward. */
function edgeNeedles(
  outline: Outline,
  side: Side,
  edge: number,
  count: number,
  shift: number,
): readonly string[] {
  if (side === 'left') return outline.needles.slice(edge - shift, edge - shift + count);
  return outline.needles.slice(edge + shift - count + 1, edge + shift + 1).toReversed();
}

/** Which shaping move follows `row`, from 1. */
const moveAfter = ({ plan }: Outline, row: number): number => row / plan.brief.shapeEveryRows;

/** Edge needles after `row`, before its shaping move is made. */
const edgesBeforeMove = (outline: Outline, row: number): ReturnType<typeof edgesAt> =>
  edgesAt(hangingOf(outline, row + 1), moveAfter(outline, row) - 1, outline.plan.brief.crawl);

function increaseStep(outline: Outline, row: number): StepBody {
  const { crawl, edgeStitches } = outline.plan.brief;
  const number = moveAfter(outline, row);
  const edges = edgesBeforeMove(outline, row);
  const from = edgeNeedles(outline, crawl, edges[crawl], edgeStitches, 0);
  const to = edgeNeedles(outline, crawl, edges[crawl], edgeStitches, 1);
  const feeder = feederAfterRow(outline, row);
  return {
    row,
    stripe: stripeNumberOf(outline, row),
    act: {
      kind: 'increase',
      side: crawl,
      number,
      from,
      to,
      outer: to[0] ?? '',
      uncovered: from.at(-1) ?? '',
    },
    moves: [
      { move: 'work', needles: to.slice(0, 1) },
      { move: 'transfer', from, to },
    ],
    after: bedAt(outline, {
      hanging: hangingOf(outline, row + 1),
      row,
      shapings: number - 1,
      feeder,
      parked: parkedDuring(outline, row, feeder),
      increased: true,
    }),
  };
}

function decreaseStep(outline: Outline, row: number): StepBody {
  const { crawl, edgeStitches } = outline.plan.brief;
  const trailing = opposite(crawl);
  const number = moveAfter(outline, row);
  const edges = edgesBeforeMove(outline, row);
  const from = edgeNeedles(outline, trailing, edges[trailing], edgeStitches, 0);
  const to = edgeNeedles(outline, trailing, edges[trailing], edgeStitches, -1);
  const emptied = from[0] ?? '';
  return {
    row,
    stripe: stripeNumberOf(outline, row),
    act: {
      kind: 'decrease',
      side: trailing,
      number,
      from,
      to,
      emptied,
      doubled: to.at(-1) ?? '',
    },
    moves: [
      { move: 'transfer', from, to },
      { move: 'rest', needles: [emptied] },
    ],
    after: bedBeforePass(outline, row + 1, false),
  };
}

const feederAfterRow = (outline: Outline, row: number): string | null =>
  rehangsAfter(outline, row) ? null : yarnOfRow(outline, row);

/** The first time the comb gives way to the claw weights, if it still hangs. */
function moveWeightsStep(outline: Outline, row: number): StepBody {
  const after = bedBeforePass(outline, row + 1, false);
  const stripe = stripeNumberOf(outline, row);
  const kind = combHangs(outline, row) ? 'comb-off' : 'move-weights';
  return {
    row,
    stripe,
    act: { kind, left: after.left ?? '', right: after.right ?? '' },
    moves: [],
    after,
  };
}
