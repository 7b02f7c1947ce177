/** A step in the fewest words that still name the needles: to be spoken aloud, and to be read across the bed. */

import type { Warning } from '../../settings/settings.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { say } from '../../shared/say.ts';
import { formatLength, formatLengthNeeded, formatTail, metric, type Units } from '../../shared/units.ts';
import type { Aside, Step } from '../../steps/step.ts';
import { sayYarn } from './yarns.ts';

/** What comes before the instruction when a press did nothing. */
export const speakWarning = (warning: Warning): string =>
  warning === 'too-soon' ? say`too soon, look first` : say`no pass is due`;

/** A short spoken instruction, such as `left: two out, L24`. */
export function speakStep(step: Step | null, units: Units = metric): string {
  if (!step) return say`the bag is finished`;
  const { act } = step;
  switch (act.kind) {
    case 'set-needles':
    case 'set-cord-needles':
      return say`${act.count} needles, ${act.first} to ${act.last}. Carriage ${act.carriage}`;
    case 'cast-on':
      return say`wrap with ${sayYarn(act.yarn)}, ${act.from} to ${act.to}`;
    case 'cast-on-cord':
      return say`wrap ${act.count} needles with ${act.yarn}`;
    case 'hang-comb':
      return act.hasComb ? say`hang the comb` : say`hold the loops down`;
    case 'thread-waste':
    case 'thread':
      return speakAside(act.aside) + say`thread ${sayYarn(act.yarn)}`;
    case 'thread-cord':
      return say`thread ${act.yarn}`;
    case 'waste-pass':
      return say`waste row ${act.number}, ${act.to}`;
    case 'lay-ravel-cord':
      return act.ravel === 'cord'
        ? say`lay the ravel cord`
        : say`draw out a loop, ${act.clipSide}, and clip it`;
    case 'ravel-pass':
    case 'cord-first-row':
      return say`knit ${act.to}`;
    case 'trim-ravel-cord':
      return act.ravel === 'cord' ? say`cut the ravel cord` : say`cut the waste yarn, counter to zero`;
    case 'hang-weights':
      return say`weights, ${act.left} and ${act.right}`;
    case 'pass':
      return say`knit ${act.to}, row ${act.rowInStripe} of ${act.stripeRows}`;
    case 'closing-pass':
      return say`closing row, knit ${act.to}, one row only`;
    case 'increase':
      return say`${act.side}: ${loops(step)} out, ${act.outer}`;
    case 'decrease':
      return say`${act.side}: ${loops(step)} in, rest ${act.emptied}`;
    case 'move-weights':
      return say`move the weights up, ${act.left} and ${act.right}`;
    case 'weights-off':
      return say`cut the waste yarn, weights off`;
    case 'take-off':
      return say`take the work off`;
    case 'rehang':
      return say`hang ${act.count} loops, ${act.first} to ${act.last}`;
    case 'release-waste':
      return act.left && act.right
        ? say`unpick the waste, weights under ${act.left} and ${act.right}`
        : say`unpick the waste`;
    case 'cut-graft-tail':
      return say`measure ${spelt(formatTail(act.lengthCm, units))} of ${act.yarn} and cut`;
    case 'lay-graft':
      return say`lay it knit side up, A above, B below, mouth ${act.mouthSide}`;
    case 'graft-start':
      return say`A up 1`;
    case 'graft-pair':
      return say`B down ${act.down}, up ${act.up}. A down ${act.down}, up ${act.up}`;
    case 'graft-end':
      return say`B down ${act.down}, the last`;
    case 'fasten-graft':
    case 'fasten-seam':
      return say`fasten the thread`;
    case 'pull-ravel-cord':
      return say`pull the ravel row out`;
    case 'fold-seam':
      return say`fold for the seam`;
    case 'bars':
      return act.from === act.through
        ? say`bar ${act.from}, draw up`
        : say`bars ${act.from} to ${act.through}, draw up`;
    case 'hide-ends':
      return say`sew the ends in`;
    case 'wash':
      return say`soak or wash it, lay it flat`;
    case 'measure-bag':
      return say`measure the bag`;
    case 'set-slip':
      return say`slip ${act.slipTo}, knit ${act.knitTo}`;
    case 'rounds':
      return act.from === act.through ? say`round ${act.from}` : say`rounds ${act.from} to ${act.through}`;
    case 'measure-rounds':
      return say`measure, ${spelt(formatLength(act.lengthCm, units))} at ${act.rounds} rounds`;
    case 'measure-cord':
      return say`measure the cord, ${spelt(formatLengthNeeded(act.lengthCm, units))}`;
    case 'draw-through':
      return say`cut, draw through, take off`;
    case 'thread-eyelets':
      return say`in through ${act.inThrough}, out through ${act.outThrough}`;
    case 'tie':
      return say`tie a bow`;
    default:
      return exhaustive(act);
  }
}

function loops(step: Step): string {
  const lifted = step.moves.find((move) => move.move === 'transfer')?.from.length;
  return [say`one`, say`two`, say`three`][(lifted ?? 0) - 1] ?? '';
}

const spelt = (length: string): string =>
  length.replace(/ cm$/, ` ${say`centimetres`}`).replace(/ in$/, ` ${say`inches`}`);

function speakAside(aside: Aside | null): string {
  if (!aside) return '';
  const yarn = sayYarn(aside.yarn);
  return aside.how === 'park' ? `${say`park ${yarn} ${aside.end}`}, ` : `${say`cut ${yarn}`}, `;
}

/** One or two words for the large view. */
export function shoutStep(step: Step): string {
  const { act } = step;
  switch (act.kind) {
    case 'set-needles':
    case 'set-cord-needles':
      return say`needles`;
    case 'cast-on':
    case 'cast-on-cord':
      return say`cast on`;
    case 'hang-comb':
      return say`comb`;
    case 'pass':
    case 'closing-pass':
    case 'ravel-pass':
    case 'waste-pass':
    case 'cord-first-row':
      return say`knit ${act.to}`;
    case 'lay-ravel-cord':
      return say`ravel cord`;
    case 'trim-ravel-cord':
      return say`cut cord`;
    case 'pull-ravel-cord':
      return say`pull cord`;
    case 'increase':
      return say`${act.side} out`;
    case 'decrease':
      return say`${act.side} in`;
    case 'thread':
    case 'thread-waste':
    case 'thread-cord':
      return say`to ${sayYarn(act.yarn)}`;
    case 'graft-start':
      return say`graft 1`;
    case 'graft-pair':
      return say`graft ${act.down}`;
    case 'graft-end':
      return say`graft ${act.down}`;
    case 'rounds':
      return say`round ${act.through}`;
    case 'thread-eyelets':
      return say`hole ${act.inThrough}`;
    case 'wash':
      return say`wash`;
    case 'measure-bag':
    case 'measure-rounds':
      return say`measure`;
    case 'rehang':
      return say`hang again`;
    case 'move-weights':
    case 'hang-weights':
      return say`weights`;
    case 'weights-off':
      return say`weights off`;
    case 'take-off':
      return say`take off`;
    case 'release-waste':
      return say`unpick`;
    case 'cut-graft-tail':
      return say`cut tail`;
    case 'lay-graft':
    case 'fold-seam':
      return say`fold`;
    case 'fasten-graft':
    case 'fasten-seam':
      return say`fasten`;
    case 'bars':
      return act.from === act.through ? say`bar ${act.from}` : say`bar ${act.from}-${act.through}`;
    case 'hide-ends':
      return say`sew ends`;
    case 'set-slip':
      return say`set slip`;
    case 'measure-cord':
      return say`measure`;
    case 'draw-through':
      return say`draw off`;
    case 'tie':
      return say`tie`;
    default:
      return exhaustive(act);
  }
}
