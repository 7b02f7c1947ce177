/**
 * What a finished bag measures, sewn and lying flat in the state of its plan: its planner's only check. The next bag of this
 * swatch is planned from what was got (common practice).
 */
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Session } from './session.ts';

/** The longest side that a bag of this kind can have: a bed's worth of the widest stitches, in cm. */
const longestCm = 800;

export interface MeasuredFault {
  readonly code: 'measured/not-a-size';
  readonly widthCm: number;
  readonly depthCm: number;
}

/** The session with the bag's size. A measuring takes the place of an earlier one. */
export function measureBag(
  session: Session,
  widthCm: number,
  depthCm: number,
): Result<Session, MeasuredFault> {
  const possible = [widthCm, depthCm].every((cm) => cm > 0 && cm <= longestCm);
  if (!possible) return fail({ code: 'measured/not-a-size', widthCm, depthCm });
  return succeed({ ...session, measured: { widthCm, depthCm, done: session.done } });
}
