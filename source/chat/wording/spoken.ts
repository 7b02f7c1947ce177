/** A step in the fewest words that still name the needles: to be spoken aloud, and to be read across the bed. */
import { exhaustive } from '../../shared/exhaustive.ts';
import { formatLength, formatTail, metric, type Units } from '../../shared/units.ts';
import type { Aside, Step } from '../../steps/step.ts';
import type { Warning } from './settings.ts';

/** What comes before the instruction when a press did nothing. */
export const speakWarning: Readonly<Record<Warning, string>> = {
  'too-soon': 'too soon, look first',
  'no-pass-due': 'no pass is due',
};

/** A short spoken instruction, such as `left: two out, L24`. */
export function speakStep(step: Step | null, units: Units = metric): string {
  if (!step) return 'the bag is finished';
  const { act } = step;
  switch (act.kind) {
    case 'set-needles':
    case 'set-cord-needles':
      return `${act.count} needles, ${act.first} to ${act.last}. Carriage ${act.carriage}`;
    case 'cast-on':
      return `cast on with ${act.yarn}, ${act.first} to ${act.last}`;
    case 'cast-on-cord':
      return `wrap ${act.count} needles with ${act.yarn}`;
    case 'hang-comb':
      return 'hang the comb';
    case 'thread-waste':
    case 'thread':
      return `${speakAside(act.aside)}thread ${act.yarn}`;
    case 'thread-cord':
      return `thread ${act.yarn}`;
    case 'waste-pass':
      return `waste row ${act.number}, ${act.to}`;
    case 'lay-ravel-cord':
      return 'lay the ravel cord';
    case 'ravel-pass':
    case 'cord-first-row':
      return `knit ${act.to}`;
    case 'trim-ravel-cord':
      return 'cut the ravel cord';
    case 'hang-weights':
      return `weights, ${act.left} and ${act.right}`;
    case 'pass':
      return `knit ${act.to}, row ${act.rowInStripe} of ${act.stripeRows}`;
    case 'closing-pass':
      return `closing row, knit ${act.to}, one row only`;
    case 'increase':
      return `${act.side}: ${loops(step)} out, ${act.outer}`;
    case 'decrease':
      return `${act.side}: ${loops(step)} in, rest ${act.emptied}`;
    case 'move-weights':
      return `move the weights up, ${act.left} and ${act.right}`;
    case 'weights-off':
      return 'cut the waste yarn, weights off';
    case 'take-off':
      return 'take the work off';
    case 'rehang':
      return `hang ${act.count} loops, ${act.first} to ${act.last}`;
    case 'release-waste':
      return act.left && act.right
        ? `unpick the waste, weights under ${act.left} and ${act.right}`
        : 'unpick the waste';
    case 'cut-graft-tail':
      return `measure ${spelt(formatTail(act.lengthCm, units))} of ${act.yarn} and cut`;
    case 'ready-graft':
      return 'make ready to graft';
    case 'bite':
      return `open ${act.opens}, finish ${act.finishes}`;
    case 'fasten-graft':
    case 'fasten-seam':
      return 'fasten the thread';
    case 'pull-ravel-cord':
      return 'pull the ravel cord';
    case 'fold-seam':
      return 'fold for the seam';
    case 'bars':
      return `bars ${act.from} to ${act.through}, draw up`;
    case 'hide-ends':
      return 'sew the ends in';
    case 'set-slip':
      return `slip ${act.slipTo}, knit ${act.knitTo}`;
    case 'round':
      return `round ${act.number}`;
    case 'measure-cord':
      return `measure the cord, ${spelt(formatLength(Math.round(act.lengthCm), units))}`;
    case 'draw-through':
      return 'cut, draw through, take off';
    case 'thread-eyelet':
      return `${act.passesBy === null ? '' : `pass by ${act.passesBy}, `}eyelet ${act.eyelet}, to the ${act.towards}`;
    case 'tie':
      return 'tie a bow';
    default:
      return exhaustive(act);
  }
}

const numerals = ['no', 'one', 'two', 'three'];

const loops = (step: Step): string =>
  numerals[step.moves.find((move) => move.move === 'transfer')?.from.length ?? 0] ?? '';

const spelt = (length: string): string => length.replace(/ cm$/, ' centimetres').replace(/ in$/, ' inches');

function speakAside(aside: Aside | null): string {
  if (!aside) return '';
  return aside.how === 'park' ? `park ${aside.yarn} ${aside.end}, ` : `cut ${aside.yarn}, `;
}

/** One or two words for the large view. */
export function shoutStep(step: Step): string {
  const { act } = step;
  switch (act.kind) {
    case 'set-needles':
    case 'set-cord-needles':
      return 'needles';
    case 'cast-on':
    case 'cast-on-cord':
      return 'cast on';
    case 'hang-comb':
      return 'comb';
    case 'pass':
    case 'closing-pass':
    case 'ravel-pass':
    case 'waste-pass':
    case 'cord-first-row':
      return `knit ${act.to}`;
    case 'lay-ravel-cord':
      return 'ravel cord';
    case 'trim-ravel-cord':
      return 'cut cord';
    case 'pull-ravel-cord':
      return 'pull cord';
    case 'increase':
      return `${act.side} out`;
    case 'decrease':
      return `${act.side} in`;
    case 'thread':
    case 'thread-waste':
    case 'thread-cord':
      return `to ${act.yarn}`;
    case 'bite':
      return `${act.opens} ${act.finishes}`;
    case 'round':
      return `round ${act.number}`;
    case 'thread-eyelet':
      return `hole ${act.eyelet} ${act.towards === 'inside' ? 'in' : 'out'}`;
    case 'rehang':
      return 'hang again';
    case 'move-weights':
    case 'hang-weights':
      return 'weights';
    case 'weights-off':
      return 'weights off';
    case 'take-off':
      return 'take off';
    case 'release-waste':
      return 'unpick';
    case 'cut-graft-tail':
      return 'cut tail';
    case 'ready-graft':
    case 'fold-seam':
      return 'fold';
    case 'fasten-graft':
    case 'fasten-seam':
      return 'fasten';
    case 'bars':
      return act.from === act.through ? `bar ${act.from}` : `bar ${act.from}-${act.through}`;
    case 'hide-ends':
      return 'sew ends';
    case 'set-slip':
      return 'set slip';
    case 'measure-cord':
      return 'measure';
    case 'draw-through':
      return 'draw off';
    case 'tie':
      return 'tie';
    default:
      return exhaustive(act);
  }
}
