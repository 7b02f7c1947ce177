/** A step in the fewest words that still name the needles: to be spoken aloud, and to be read across the bed. */

import type { Warning } from '../../settings/settings.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Aside, Step } from '../../steps/step.ts';
import type { Words } from '../../wording/words.ts';
import { sayYarn } from './yarns.ts';

/** What comes before the instruction when a press did nothing. */
export const speakWarning = (warning: Warning, words: Words): string =>
  warning === 'too-soon' ? words.say`too soon, look first` : words.say`no pass is due`;

/** A short spoken instruction, such as `left: two out, L24`. */
export function speakStep(step: Step | null, words: Words): string {
  if (!step) return words.say`the bag is finished`;
  const { act } = step;
  switch (act.kind) {
    case 'set-needles':
    case 'set-cord-needles':
      return words.say`${act.count} needles, ${act.first} to ${act.last}. Carriage ${act.carriage}`;
    case 'cast-on':
      return words.say`wrap with ${sayYarn(act.yarn, words)}, ${act.from} to ${act.to}`;
    case 'cast-on-cord':
      return words.say`wrap ${act.count} needles with ${act.yarn}`;
    case 'hang-comb':
      return act.hasComb ? words.say`hang the comb` : words.say`hold the loops down`;
    case 'thread-waste':
    case 'thread':
      return speakAside(act.aside, words) + words.say`thread ${sayYarn(act.yarn, words)}`;
    case 'thread-cord':
      return words.say`thread ${act.yarn}`;
    case 'waste-pass':
      return words.say`waste row ${act.number}, ${act.to}`;
    case 'lay-ravel-cord':
      return act.ravel === 'cord'
        ? words.say`lay the ravel cord`
        : words.say`draw out a loop, ${act.clipSide}, and clip it`;
    case 'ravel-pass':
    case 'cord-first-row':
      return words.say`knit ${act.to}`;
    case 'trim-ravel-cord':
      return act.ravel === 'cord'
        ? words.say`cut the ravel cord`
        : words.say`cut the waste yarn, counter to zero`;
    case 'hang-weights':
      return words.say`weights, ${act.left} and ${act.right}`;
    case 'pass':
      return words.say`knit ${act.to}, row ${act.rowInStripe} of ${act.stripeRows}`;
    case 'closing-pass':
      return words.say`closing row, knit ${act.to}, one row only`;
    case 'increase':
      return words.say`${act.side}: ${loops(step, words)} out, ${act.outer}`;
    case 'decrease':
      return words.say`${act.side}: ${loops(step, words)} in, rest ${act.emptied}`;
    case 'move-weights':
      return words.say`move the weights up, ${act.left} and ${act.right}`;
    case 'weights-off':
      return words.say`cut the waste yarn, weights off`;
    case 'take-off':
      return words.say`take the work off`;
    case 'rehang':
      return words.say`hang ${act.count} loops, ${act.first} to ${act.last}`;
    case 'release-waste':
      return act.left && act.right
        ? words.say`unpick the waste, weights under ${act.left} and ${act.right}`
        : words.say`unpick the waste`;
    case 'cut-graft-tail':
      return words.say`measure ${spelt(words.amounts.tail(act.lengthCm), words)} of ${act.yarn} and cut`;
    case 'lay-graft':
      return words.say`lay it knit side up, A above, B below, mouth ${act.mouthSide}`;
    case 'graft-start':
      return words.say`A up 1`;
    case 'graft-pair':
      return words.say`B down ${act.down}, up ${act.up}. A down ${act.down}, up ${act.up}`;
    case 'graft-end':
      return words.say`B down ${act.down}, the last`;
    case 'fasten-graft':
    case 'fasten-seam':
      return words.say`fasten the thread`;
    case 'pull-ravel-cord':
      return words.say`pull the ravel row out`;
    case 'fold-seam':
      return words.say`fold for the seam`;
    case 'bars':
      return act.from === act.through
        ? words.say`bar ${act.from}, draw up`
        : words.say`bars ${act.from} to ${act.through}, draw up`;
    case 'hide-ends':
      return words.say`sew the ends in`;
    case 'wash':
      return words.say`soak or wash it, lay it flat`;
    case 'measure-bag':
      return words.say`measure the bag`;
    case 'set-slip':
      return words.say`slip ${act.slipTo}, knit ${act.knitTo}`;
    case 'rounds':
      return act.from === act.through
        ? words.say`round ${act.from}`
        : words.say`rounds ${act.from} to ${act.through}`;
    case 'measure-rounds':
      return words.say`measure, ${spelt(words.amounts.length(act.lengthCm), words)} at ${act.rounds} rounds`;
    case 'measure-cord':
      return words.say`measure the cord, ${spelt(words.amounts.lengthNeeded(act.lengthCm), words)}`;
    case 'draw-through':
      return words.say`cut, draw through, take off`;
    case 'thread-eyelets':
      return words.say`in through ${act.inThrough}, out through ${act.outThrough}`;
    case 'tie':
      return words.say`tie a bow`;
    default:
      return exhaustive(act);
  }
}

function loops(step: Step, words: Words): string {
  const lifted = step.moves.find((move) => move.move === 'transfer')?.from.length;
  return [words.say`one`, words.say`two`, words.say`three`][(lifted ?? 0) - 1] ?? '';
}

const spelt = (length: string, words: Words): string =>
  length.replace(/ cm$/, ` ${words.say`centimetres`}`).replace(/ in$/, ` ${words.say`inches`}`);

function speakAside(aside: Aside | null, words: Words): string {
  if (!aside) return '';
  const yarn = sayYarn(aside.yarn, words);
  return aside.how === 'park' ? `${words.say`park ${yarn} ${aside.end}`}, ` : `${words.say`cut ${yarn}`}, `;
}

/** One or two words for the large view. */
export function shoutStep(step: Step, words: Words): string {
  const { act } = step;
  switch (act.kind) {
    case 'set-needles':
    case 'set-cord-needles':
      return words.say`needles`;
    case 'cast-on':
    case 'cast-on-cord':
      return words.say`cast on`;
    case 'hang-comb':
      return words.say`comb`;
    case 'pass':
    case 'closing-pass':
    case 'ravel-pass':
    case 'waste-pass':
    case 'cord-first-row':
      return words.say`knit ${act.to}`;
    case 'lay-ravel-cord':
      return words.say`ravel cord`;
    case 'trim-ravel-cord':
      return words.say`cut cord`;
    case 'pull-ravel-cord':
      return words.say`pull cord`;
    case 'increase':
      return words.say`${act.side} out`;
    case 'decrease':
      return words.say`${act.side} in`;
    case 'thread':
    case 'thread-waste':
    case 'thread-cord':
      return words.say`to ${sayYarn(act.yarn, words)}`;
    case 'graft-start':
      return words.say`graft 1`;
    case 'graft-pair':
      return words.say`graft ${act.down}`;
    case 'graft-end':
      return words.say`graft ${act.down}`;
    case 'rounds':
      return words.say`round ${act.through}`;
    case 'thread-eyelets':
      return words.say`hole ${act.inThrough}`;
    case 'wash':
      return words.say`wash`;
    case 'measure-bag':
    case 'measure-rounds':
      return words.say`measure`;
    case 'rehang':
      return words.say`hang again`;
    case 'move-weights':
    case 'hang-weights':
      return words.say`weights`;
    case 'weights-off':
      return words.say`weights off`;
    case 'take-off':
      return words.say`take off`;
    case 'release-waste':
      return words.say`unpick`;
    case 'cut-graft-tail':
      return words.say`cut tail`;
    case 'lay-graft':
    case 'fold-seam':
      return words.say`fold`;
    case 'fasten-graft':
    case 'fasten-seam':
      return words.say`fasten`;
    case 'bars':
      return act.from === act.through
        ? words.say`bar ${act.from}`
        : words.say`bar ${act.from}-${act.through}`;
    case 'hide-ends':
      return words.say`sew ends`;
    case 'set-slip':
      return words.say`set slip`;
    case 'measure-cord':
      return words.say`measure`;
    case 'draw-through':
      return words.say`draw off`;
    case 'tie':
      return words.say`tie`;
    default:
      return exhaustive(act);
  }
}
