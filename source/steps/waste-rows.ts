/** Waste rows in one step: several passes to and fro, the last of them to the side `end`. */
import { opposite, type Side } from '../bed/bed.ts';
import type { Act, StepBody } from './step.ts';

export interface WasteRows {
  readonly yarn: string;
  readonly from: number;
  readonly through: number;
  readonly of: number;
  readonly end: Side;
  readonly first?: Extract<Act, { readonly kind: 'waste-rows' }>['first'];
}

export function wasteRows({ end, first = null, ...rows }: WasteRows): Pick<StepBody, 'act' | 'moves'> {
  const count = rows.through - rows.from + 1;
  return {
    act: { kind: 'waste-rows', ...rows, to: end, first },
    moves: Array.from({ length: count }, (_, i) => ({
      move: 'knit',
      to: (count - 1 - i) % 2 === 0 ? end : opposite(end),
    })),
  };
}
