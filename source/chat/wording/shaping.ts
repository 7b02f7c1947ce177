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
  const when = rowsAway === 0 ? words.prompt.soon.now : words.prompt.soon.in(rowsAway);
  const out =
    increase.act.kind === 'increase' ? words.prompt.soon.outTo(increase.act.side, increase.act.outer) : '';
  const inward =
    decrease.act.kind === 'decrease' ? words.prompt.soon.inRest(decrease.act.side, decrease.act.emptied) : '';
  return words.prompt.soon.move(when, number, of, out, inward);
}
