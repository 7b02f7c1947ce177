/** What came of something, in tests where only the one or the other can have come of it. */
import type { Result } from '../../source/shared/result.ts';

export function valueIn<Value>(result: Result<Value, unknown>): Value {
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  return result.value;
}

export function faultIn<Fault>(result: Result<unknown, Fault>): Fault {
  if (result.ok) throw new Error('nothing is at fault');
  return result.fault;
}
