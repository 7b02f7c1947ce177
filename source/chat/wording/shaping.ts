import type { Step } from '../../steps/step.ts';
import type { Words } from '../../wording/words.ts';

export interface Soon {
  readonly number: number;
  readonly of: number;
  readonly rowsAway: number;
  readonly increase: Step;
  readonly decrease: Step;
}

/** The next shaping move in one line: `in 2 rows, move 4 of 31: left out to L24, right in, R22 out of work`. */
export function saySoon({ number, of, rowsAway, increase, decrease }: Soon, words: Words): string {
  const when = rowsAway === 0 ? words.say`now` : words.say`in ${words.count(rowsAway, 'row')}`;
  const out =
    increase.act.kind === 'increase' ? words.say`${increase.act.side} out to ${increase.act.outer}` : '';
  const inward =
    decrease.act.kind === 'decrease'
      ? words.say`${decrease.act.side} in, ${decrease.act.emptied} out of work`
      : '';
  return words.say`${when}, move ${number} of ${of}: ${out}, ${inward}`;
}
