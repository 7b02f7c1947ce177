/** Tells a step to the ears: a bell that differs by what comes next, and a spoken instruction. Never waited for. */
import { speakStep } from '../chat/wording/spoken.ts';
import { currentStep } from '../session/session.ts';
import type { Step } from '../steps/step.ts';
import type { BenchState } from './bench-store.ts';
import type { Speech } from './speech.ts';

/** Rings: one for an ordinary step, two for a shaping move, three where the colour changes. */
export function ringsFor({ act }: Step): number {
  if (act.kind === 'thread') return 3;
  return act.kind === 'increase' || act.kind === 'decrease' ? 2 : 1;
}

const betweenRingsMs = 180;

export interface AnnounceOptions {
  readonly speech: Speech;
  /** Writes to the terminal. */
  readonly write: (text: string) => void;
}

export function createAnnouncer({
  speech,
  write,
}: AnnounceOptions): (state: BenchState, again: boolean) => void {
  let ringing: NodeJS.Timeout | undefined;
  const ring = (times: number): void => {
    clearTimeout(ringing);
    if (times === 0) return;
    write('\x07');
    ringing = setTimeout(ring, betweenRingsMs, times - 1);
    ringing.unref();
  };
  return ({ session, settings }, again) => {
    const step = currentStep(session);
    if (!step) return;
    if (settings.bell && !again) ring(ringsFor(step));
    if (settings.speech) speech.say(speakStep(step));
  };
}
