/** A step in the fewest words that still name the needles: to be spoken aloud, and to be read across the bed. */
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Aside, Step } from '../../steps/step.ts';

/** A short spoken instruction, such as `left: two out, L24`. */
export function speakStep(step: Step): string {
  const { act } = step;
  switch (act.kind) {
    case 'set-needles':
    case 'set-cord-needles':
      return `${act.count} needles, ${act.first} to ${act.last}. Carriage ${act.carriage}`;
    case 'cast-on':
    case 'cast-on-cord':
      return `cast on with ${act.yarn}`;
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
      return 'unpick the waste';
    case 'cut-graft-tail':
      return `cut ${act.lengthCm} centimetres of ${act.yarn}`;
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
      return `measure, ${Math.round(act.lengthCm)} centimetres`;
    case 'draw-through':
      return 'cut, draw through, take off';
    case 'thread-eyelet':
      return `eyelet ${act.eyelet}, to the ${act.towards}`;
    case 'tie':
      return 'tie a bow';
    default:
      return exhaustive(act);
  }
}

const numerals = ['no', 'one', 'two', 'three'];

const loops = (step: Step): string =>
  numerals[step.moves.find((move) => move.move === 'transfer')?.from.length ?? 0] ?? '';

function speakAside(aside: Aside | null): string {
  if (!aside) return '';
  return aside.how === 'park' ? `park ${aside.yarn} ${aside.end}, ` : `cut ${aside.yarn}, `;
}

/** One or two words for the large view. */
export function shoutStep(step: Step): string {
  const { act } = step;
  switch (act.kind) {
    case 'pass':
    case 'closing-pass':
    case 'ravel-pass':
    case 'waste-pass':
    case 'cord-first-row':
      return `knit ${act.to}`;
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
    case 'cut-graft-tail':
      return `cut ${act.lengthCm} cm`;
    case 'bars':
      return `bar ${act.through}`;
    default:
      return 'look';
  }
}
