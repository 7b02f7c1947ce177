/** What sort of act each is: one table that screens, switches, the bell, the cautions and the way back all ask. */

import type { Act } from './act.ts';
import type { Step } from './step.ts';

/** What could hurt; each is said where it is met first. */
type Hazard = 'hooks' | 'weights' | 'weights-off' | 'steam' | 'cord';

interface ActTraits {
  /** The carriage knits across, so that afterwards each needle between the edges holds one loop of the yarn in the feeder. */
  readonly pass: boolean;
  /**
   * Not to be trodden past, since mending it costs the most: a pass with a new yarn, as an empty feeder drops every stitch; a
   * rehang; the closing row; whatever is cut (common practice).
   */
  readonly guarded: 'always' | 'at first' | 'never';
  /** What the hands cannot take back beside a cut and a strand that was pulled out. */
  readonly final: 'off-the-needles' | 'drawn-through' | null;
  readonly hazard: Hazard | null;
  /** Rings: a shaping move differs to the ear from an ordinary step, and another yarn in the feeder from both. */
  readonly bell: 1 | 2 | 3;
}

const plain: ActTraits = { pass: false, guarded: 'never', final: null, hazard: null, bell: 1 };
const guarded: ActTraits = { ...plain, guarded: 'always' };
const pass: ActTraits = { ...plain, pass: true };
const yarn: ActTraits = { ...plain, bell: 3 };
const shaping: ActTraits = { ...plain, bell: 2 };

export const acts: Readonly<Record<Act['kind'], ActTraits>> = {
  'set-needles': { ...plain, hazard: 'hooks' },
  'cast-on': plain,
  'thread-waste': yarn,
  'waste-rows': { ...pass, guarded: 'at first' },
  'hang-comb': { ...plain, hazard: 'weights' },
  'hang-weights': { ...plain, hazard: 'weights' },
  'lay-ravel-cord': plain,
  'ravel-pass': { ...pass, guarded: 'always' },
  'trim-ravel-cord': guarded,
  thread: yarn,
  pass: { ...pass, guarded: 'at first' },
  increase: shaping,
  decrease: shaping,
  'comb-off': plain,
  'move-weights': plain,
  'weights-off': { ...guarded, hazard: 'weights-off' },
  'take-off': { ...guarded, final: 'off-the-needles' },
  'set-needles-again': plain,
  rehang: guarded,
  'release-waste': { ...plain, guarded: 'at first' },
  'closing-pass': { ...pass, guarded: 'always' },
  'cut-graft-tail': guarded,
  'lay-graft': plain,
  'graft-start': plain,
  'graft-pair': plain,
  'graft-end': plain,
  'fasten-graft': plain,
  'pull-ravel-cord': plain,
  'fold-seam': plain,
  bars: plain,
  'fasten-seam': plain,
  'fold-corner': plain,
  'sew-corner': plain,
  'hide-ends': { ...plain, hazard: 'steam' },
  wash: plain,
  'measure-bag': plain,
  'set-hem-needles': plain,
  'pick-up': { ...plain, hazard: 'weights' },
  'thread-hem': yarn,
  'hem-rows': pass,
  'fold-row': { ...pass, guarded: 'always' },
  'hang-fold': guarded,
  'hem-close': pass,
  'bind-off': { ...guarded, hazard: 'weights-off' },
  'join-hem': plain,
  'set-cord-needles': plain,
  'cast-on-cord': plain,
  'thread-cord': yarn,
  'cord-first-row': { ...pass, guarded: 'always' },
  'set-slip': plain,
  'weigh-flat-cord': plain,
  rounds: pass,
  'flat-rows': pass,
  'measure-rounds': plain,
  'measure-cord': plain,
  'draw-through': { ...guarded, final: 'drawn-through' },
  'sew-cord': plain,
  'thread-eyelets': plain,
  tie: { ...plain, hazard: 'cord' },
};

/** What could hurt at this step; of two cords the last one tied says it for both. */
export const hazardAt = ({ act }: Step): Hazard | null =>
  act.kind === 'tie' && act.draw === 'first' ? null : acts[act.kind].hazard;

export function isGuarded({ act, moves }: Step): boolean {
  if (moves.some(({ move }) => move === 'cut')) return true;
  const how = acts[act.kind].guarded;
  return how === 'at first' ? isFirst(act) : how === 'always';
}

function isFirst(act: Act): boolean {
  switch (act.kind) {
    case 'pass':
      return act.rowInStripe === 1;
    case 'waste-rows':
      return act.from === 1;
    case 'release-waste':
      return act.rehangs;
    default:
      return false;
  }
}

/** Carriage passes in a step: one for a row, two for a round of cord, none where the carriage rests. */
export const passesIn = ({ moves }: Step): number =>
  moves.filter(({ move }) => move === 'knit' || move === 'slip').length;
