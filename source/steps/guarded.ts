import type { Step } from './step.ts';

/**
 * Steps that must not be trodden past, since mending them costs the most: the first pass with a new yarn, since a pass with
 * an empty feeder drops every stitch; a rehang; the closing row (common practice).
 */
export function isGuarded({ act, moves }: Step): boolean {
  switch (act.kind) {
    case 'pass':
      return act.rowInStripe === 1;
    case 'waste-pass':
      return act.number === 1;
    case 'release-waste':
      return act.rehang;
    case 'ravel-pass':
    case 'cord-first-row':
    case 'closing-pass':
    case 'cut-graft-tail':
    case 'take-off':
    case 'rehang':
      return true;
    default:
      return moves.some((move) => move.move === 'cut');
  }
}

/** Carriage passes in a step: one for a row, two for a round of cord, none where the carriage rests. */
export const passesIn = ({ moves }: Step): number =>
  moves.filter(({ move }) => move === 'knit' || move === 'slip').length;
