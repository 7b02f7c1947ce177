/** What the hands do next, as the one thing that a glance aside should tell: kinds, sides and numbers, no words. */

import type { Side } from '../bed/bed.ts';
import type { Draw } from '../planning/eyelets.ts';
import type { Act } from '../steps/act.ts';
import type { GraftMovement } from '../steps/graft.ts';
import type { Job } from '../steps/job.ts';
import type { BedAfter, Step } from '../steps/step.ts';

/** How one needle looks. `empty` is in work without a loop. */
export type NeedleLook = 'loop' | 'empty' | 'two' | 'out';

export interface Count {
  readonly at: number;
  readonly of: number;
}

export type Glance =
  | { readonly kind: 'pass'; readonly to: Side; readonly inStripe: Count | null }
  | {
      readonly kind: 'edge';
      readonly side: Side;
      readonly change: 'increase' | 'decrease';
      readonly move: Count;
      /** The needle that comes into work, or goes out of it. */
      readonly needle: string;
    }
  | { readonly kind: 'yarn'; readonly leaves: YarnSetDown | null; readonly comes: string }
  | {
      readonly kind: 'graft';
      readonly movements: readonly GraftMovement[];
      readonly loops: number;
      readonly count: Count;
    }
  | { readonly kind: 'bars'; readonly from: number; readonly through: number; readonly of: number }
  /** Rows to and fro, the last of them to the side `to`. */
  | {
      readonly kind: 'passes';
      readonly rows: 'waste' | 'hem' | 'cord';
      readonly from: number;
      readonly through: number;
      readonly of: number;
      readonly to: Side;
    }
  | Omit<Extract<Act, { readonly kind: 'rounds' }>, 'counter'>
  | {
      readonly kind: 'holes';
      readonly draw: Draw;
      readonly inThrough: number;
      readonly outThrough: number;
      readonly count: Count;
    }
  /** A corner of a boxed bottom, laid flat to be sewn across. */
  | { readonly kind: 'corner'; readonly fromTipCm: number; readonly acrossCm: number }
  | { readonly kind: 'other' };

/** A yarn on its way out of the feeder: to which side it is parked, null where it is cut. */
interface YarnSetDown {
  readonly yarn: string;
  readonly parks: Side | null;
}

export function glanceAt({ plan }: Job, step: Step): Glance {
  const { act } = step;
  switch (act.kind) {
    case 'pass':
      return { kind: 'pass', to: act.to, inStripe: { at: act.rowInStripe, of: act.stripeRows } };
    case 'waste-rows':
    case 'flat-rows':
    case 'hem-rows': {
      const { from, through, of, to } = act;
      const rows = ({ 'waste-rows': 'waste', 'hem-rows': 'hem', 'flat-rows': 'cord' } as const)[act.kind];
      return { kind: 'passes', rows, from, through, of, to };
    }
    case 'closing-pass':
    case 'ravel-pass':
    case 'cord-first-row':
    case 'fold-row':
    case 'hem-close':
      return { kind: 'pass', to: act.to, inStripe: null };
    case 'increase':
    case 'decrease': {
      const needle = act.kind === 'increase' ? act.outer : act.emptied;
      const move = { at: act.number, of: plan.shapings };
      return { kind: 'edge', side: act.side, change: act.kind, move, needle };
    }
    case 'thread':
    case 'thread-waste': {
      const { aside } = act;
      const leaves = aside && { yarn: aside.yarn, parks: aside.how === 'park' ? aside.end : null };
      return { kind: 'yarn', leaves, comes: act.yarn };
    }
    case 'thread-cord':
    case 'thread-hem':
      return { kind: 'yarn', leaves: null, comes: act.yarn };
    case 'graft-start':
    case 'graft-pair':
    case 'graft-end':
      return {
        kind: 'graft',
        movements: step.moves.flatMap((move) => (move.move === 'graft' ? [move] : [])),
        loops: plan.stitches,
        count: { at: act.kind === 'graft-start' ? 1 : act.down, of: plan.stitches },
      };
    case 'bars':
      return { kind: 'bars', from: act.from, through: act.through, of: act.of };
    case 'fold-corner':
    case 'sew-corner': {
      const { fromTipCm = 0, cornerSeamCm: acrossCm = 0 } = plan.boxed ?? {};
      return { kind: 'corner', fromTipCm, acrossCm };
    }
    case 'rounds': {
      const { from, through, of, slipTo, knitTo } = act;
      return { kind: 'rounds', from, through, of, slipTo, knitTo };
    }
    case 'thread-eyelets': {
      const { draw, inThrough, outThrough, hole, of } = act;
      return { kind: 'holes', draw, inThrough, outThrough, count: { at: hole, of } };
    }
    default:
      return { kind: 'other' };
  }
}

/** The yarn that must be in the hands now: in the feeder, or where the bed is bare the thread that is worked with. */
export function yarnAtHand({ plan }: Job, step: Step, before: BedAfter | null): string | null {
  const { act } = step;
  if ('yarn' in act) return act.yarn;
  const fed = step.after.feeder ?? before?.feeder ?? null;
  if (fed !== null) return fed;
  if (step.phase === 'cord') return plan.cord.yarn;
  if (step.phase === 'hem') return plan.hem?.yarn ?? null;
  return step.phase === 'graft' || step.phase === 'seam' ? (plan.stripes.at(-1)?.yarn ?? null) : null;
}
