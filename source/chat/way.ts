/** Work with the hands outside the plan, guided one confirmed step at a time: the way back, or a mend. */

import type { Move } from '../bed/move.ts';
import type { Plan } from '../planning/plan.ts';
import type { Command } from '../session/command.ts';
import type { MendMove, MendStep } from '../session/mend.ts';
import type { RipStep } from '../session/rip-back/rip-back.ts';
import type { Session } from '../session/session.ts';
import type { Step } from '../steps/step.ts';
import type { Words } from '../wording/words.ts';
import { formatMendStep, formatRipStep } from './wording/finding.ts';
import { sayStep } from './wording/steps.ts';

/** What the hands do in one step of a way. Its sentence is made whenever it is shown, so that it follows language and units. */
export type HandWork =
  | { readonly is: 'rip'; readonly step: RipStep }
  | { readonly is: 'mend'; readonly step: MendStep }
  /** A planned step that comes before the mend can begin. */
  | { readonly is: 'plan'; readonly step: Step; readonly plan: Plan };

export interface WayStep {
  readonly hands: HandWork;
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
export function stepBack(way: Way): Way | 'stop' | 'back' {
  const last = way.steps[way.at - 1];
  if (!last) return 'stop';
  return last.command === null ? { ...way, at: way.at - 1 } : 'back';
}

/** Commands that keep something and move nothing. */
const beside: ReadonlySet<Command['do']> = new Set(['note', 'mark', 'weigh', 'measured']);

/** The way once the session has moved by `command`; null where it leads no further. */
export function wayAfter(way: Way | null, { do: kind }: Command, session: Session): Way | null {
  if (!way || beside.has(kind)) return way;
  if (way.kind !== 'back' || (kind !== 'back' && kind !== 'redo')) return null;
  const at = way.steps.findIndex(({ command }) => command?.do === 'rip' && command.done < session.done);
  return at < 0 ? null : { ...way, at };
}

/** What the counter must be turned back to after a step of a way; null where it stays. */
export function counterAfter({ hands }: WayStep): number | null {
  return hands.is !== 'plan' && hands.step.turnsCounterBack ? hands.step.row : null;
}

export const movesOf = ({ hands }: WayStep): readonly (Move | MendMove)[] => hands.step.moves;

/** `Back, 3 of 12: Pull out the row of mint …` */
export const sayWayStep = ({ kind, steps, at }: Way, words: Words, offset = 0): string | null => {
  const step = steps[at + offset];
  if (!step) return null;
  const number = at + offset + 1;
  const text = sayHands(step.hands, words);
  return kind === 'back'
    ? words.say`Back, ${number} of ${steps.length}: ${text}`
    : words.say`Mend, ${number} of ${steps.length}: ${text}`;
};

function sayHands(hands: HandWork, words: Words): string {
  switch (hands.is) {
    case 'rip':
      return formatRipStep(hands.step, words);
    case 'mend':
      return formatMendStep(hands.step, words);
    case 'plan':
      return sayStep(hands.step, words);
  }
}
