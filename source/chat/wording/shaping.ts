import { count, say } from '../../shared/say.ts';
import type { Step } from '../../steps/step.ts';

export interface Soon {
  readonly number: number;
  readonly of: number;
  readonly rowsAway: number;
  readonly increase: Step;
  readonly decrease: Step;
}

/** The next shaping move in one line: `in 2 rows, move 4 of 31: left out to L24, right in, R22 out of work`. */
export function saySoon({ number, of, rowsAway, increase, decrease }: Soon): string {
  const when = rowsAway === 0 ? say`now` : say`in ${count(rowsAway, 'row')}`;
  const out = increase.act.kind === 'increase' ? say`${increase.act.side} out to ${increase.act.outer}` : '';
  const inward =
    decrease.act.kind === 'decrease' ? say`${decrease.act.side} in, ${decrease.act.emptied} out of work` : '';
  return say`${when}, move ${number} of ${of}: ${out}, ${inward}`;
}
