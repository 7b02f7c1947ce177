/** Tells a step to the ears: a bell that differs by what comes next, and a spoken instruction. Never waited for. */

import { currentStep } from '../../session/session.ts';
import { acts } from '../../steps/acts.ts';
import { speakRest } from '../../wording/cautions.ts';
import { sayWayStep } from '../../wording/finding.ts';
import { speakStep, speakWarning } from '../../wording/steps.ts';
import type { Announcement, BenchState } from './bench-state.ts';
import type { Speech } from './speech.ts';

/** A press that did nothing must not sound like one that did. */
const warningRings = 4;
/** Closer together they run into one another (rule of thumb). */
const betweenRingsMs = 180;

export type Announce = (state: Pick<BenchState, 'session' | 'settings' | 'words'>, why: Announcement) => void;

export interface AnnounceOptions {
  readonly speech: Speech;
  /** Writes to the terminal. */
  readonly write: (text: string) => void;
}

export function createAnnouncer({ speech, write }: AnnounceOptions): Announce {
  let ringing: NodeJS.Timeout | undefined;
  const ring = (times: number): void => {
    clearTimeout(ringing);
    if (times === 0) return;
    write('\x07');
    ringing = setTimeout(ring, betweenRingsMs, times - 1);
    ringing.unref();
  };
  return ({ session, settings, words }, why) => {
    const { way } = session;
    const step = currentStep(session);
    const isWarning = why !== 'next' && why !== 'again' && why !== 'rest';
    if (settings.bell && why !== 'again' && why !== 'rest')
      ring(isWarning ? warningRings : step && !way ? acts[step.act.kind].bell : 1);
    if (!settings.speech) return speech.stop();
    const instruction = (way && sayWayStep(way, words)) ?? speakStep(step, words);
    const first = why === 'rest' ? speakRest(words) : isWarning ? speakWarning(why, words) : null;
    speech.say(first === null ? instruction : `${first}: ${instruction}`, words.language);
  };
}
