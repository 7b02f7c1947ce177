/** What the maker is in the middle of, for help that fits. */
import { currentStep, type Session } from '../session/session.ts';
import type { Way } from '../session/way.ts';
import type { Step } from '../steps/step.ts';

export interface Scene {
  readonly session: Session;
  readonly way: Way | null;
  /** What is wrong with saving; null while every press is on disk. */
  readonly trouble: string | null;
  /** Things that `take` would carry out. */
  readonly offers: number;
}

export type Situation =
  | 'trouble'
  | 'way'
  | 'offer'
  | 'finished'
  | 'cast-on'
  | 'stripes'
  | 'shaping'
  | 'rehang'
  | 'closing-row'
  | 'graft'
  | 'seam'
  | 'cord'
  | 'threading';

/** The most pressing one comes first: unsaved work, then what is being guided or offered, then the step. */
export function situationOf({ session, way, trouble, offers }: Scene): Situation {
  if (trouble !== null) return 'trouble';
  if (way) return 'way';
  if (offers > 0) return 'offer';
  const step = currentStep(session);
  return step ? situationAt(step) : 'finished';
}

function situationAt({ phase, act }: Step): Situation {
  switch (act.kind) {
    case 'increase':
    case 'decrease':
      return 'shaping';
    case 'thread-eyelets':
    case 'tie':
      return 'threading';
    case 'set-needles-again':
    case 'rehang':
      return 'rehang';
    case 'weights-off':
    case 'take-off':
    case 'release-waste':
      return act.rehangs ? 'rehang' : phase;
    default:
      return phase;
  }
}
