/** Work with the hands outside the plan, guided one confirmed step at a time: the way back, or a mend. */
import type { Command } from '../session/command.ts';
import type { Session } from '../session/session.ts';
import { say } from '../shared/say.ts';

export interface WayStep {
  readonly text: string;
  /** What the log keeps once the step is done; null where only the end of the way is kept. */
  readonly command: Command | null;
}

export interface Way {
  readonly kind: 'back' | 'mend';
  readonly steps: readonly WayStep[];
  /** Steps of the way that are done. */
  readonly at: number;
}

/** The way after its next step; null at its end. */
export const stepOn = (way: Way): Way | null =>
  way.at + 1 < way.steps.length ? { ...way, at: way.at + 1 } : null;

/** What taking back means on a way: one of its own steps that the log does not hold, leaving it, or the log's last command. */
export function stepBack(way: Way): Way | 'leave' | 'take-back' {
  const last = way.steps[way.at - 1];
  if (!last) return 'leave';
  return last.command === null ? { ...way, at: way.at - 1 } : 'take-back';
}

/** The way once the session has moved by `command`; null where it leads no further. */
export function wayAfter(way: Way | null, { do: kind }: Command, session: Session): Way | null {
  if (!way || kind === 'note' || kind === 'mark' || kind === 'yarn-left') return way;
  if (way.kind !== 'back' || (kind !== 'take-back' && kind !== 'redo')) return null;
  const at = way.steps.findIndex(({ command }) => command?.do === 'rip-back' && command.done < session.done);
  return at < 0 ? null : { ...way, at };
}

/** `Back, 3 of 12: Pull out the row of mint …` */
export const sayWayStep = ({ kind, steps, at }: Way, offset = 0): string | null => {
  const step = steps[at + offset];
  if (!step) return null;
  const number = at + offset + 1;
  return kind === 'back'
    ? say`Back, ${number} of ${steps.length}: ${step.text}`
    : say`Mend, ${number} of ${steps.length}: ${step.text}`;
};
