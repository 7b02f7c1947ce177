/**
 * Hands and shoulders rest every half hour of work, and five minutes without a press are such a rest (rule of thumb, no
 * source). Time comes as an argument, in milliseconds.
 */

/** Work without a rest so far: when it began, and its newest press. */
export interface Spell {
  readonly sinceMs: number;
  readonly lastMs: number;
}

const spellMs = 30 * 60_000;
const restMs = 5 * 60_000;

/** The spell after a press; a rest, or a clock that was set back, begins a new one. */
export function pressed(spell: Spell | null, atMs: number): Spell {
  const rested = spell === null || atMs - spell.lastMs > restMs || atMs < spell.lastMs;
  return { sinceMs: rested ? atMs : spell.sinceMs, lastMs: atMs };
}

export const isRestDue = ({ sinceMs, lastMs }: Spell): boolean => lastMs - sinceMs >= spellMs;
