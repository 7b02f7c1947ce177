/**
 * The graft, bite by bite: each bite opens one loop and finishes one across from it, so that the thread follows the path
 * of a knitted row. Odd bites go from A to B, even ones from B back to A, and every loop is entered twice but the two
 * that the edge holds (common practice). Edge A is where the tail hangs.
 */
import { bareBed, carriageAfter } from './bed-after.ts';
import { carriageAtEnd } from './closing-row.ts';
import type { Outline } from './outline.ts';
import type { Act, StepBody } from './step.ts';

/** The loops of bite `number`, from 1. */
export function biteLoops(number: number): { readonly opens: string; readonly finishes: string } {
  const loop = Math.ceil(number / 2);
  return number % 2 === 1
    ? { opens: `A${loop}`, finishes: `B${loop}` }
    : { opens: `B${loop + 1}`, finishes: `A${loop}` };
}

const closingSteps = ({ plan }: Outline): number => (plan.graft.goesOnToSeam ? 2 : 3);

export const countGraft = (outline: Outline): number => 1 + outline.plan.graft.bites + closingSteps(outline);

export function graftStep(outline: Outline, local: number): StepBody {
  const { plan } = outline;
  const { bites, goesOnToSeam } = plan.graft;
  const body = (act: Act, moves: StepBody['moves']): StepBody => ({
    row: plan.knittedRows,
    stripe: null,
    act,
    moves,
    after: bareBed(outline, carriageAtEnd(outline)),
  });
  if (local === 0)
    return body({ kind: 'ready-graft', tailSide: carriageAfter(outline, plan.knittedRows) }, []);
  if (local <= bites) {
    const loops = biteLoops(local);
    return body({ kind: 'bite', number: local, ...loops }, [{ move: 'bite', ...loops }]);
  }
  const part = local - bites - (goesOnToSeam ? 0 : 1);
  if (part === 0) return body({ kind: 'fasten-graft' }, [{ move: 'fasten' }]);
  return part === 1
    ? body({ kind: 'pull-ravel-cord' }, [{ move: 'release', what: 'ravel cord' }])
    : body({ kind: 'release-waste', reseat: false, left: null, right: null }, [
        { move: 'release', what: 'waste' },
      ]);
}
