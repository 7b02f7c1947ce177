import { isRestDue, pressed, type Spell } from '../../chat/rest.ts';

/** Called at each press: reminds once each half hour of work. `nowMs` is the time; without it nobody is reminded. */
export function createRestReminder(nowMs: (() => number) | undefined, remind: () => void): () => void {
  let spell: Spell | null = null;
  return () => {
    if (!nowMs) return;
    spell = pressed(spell, nowMs());
    if (!isRestDue(spell)) return;
    spell = { ...spell, sinceMs: spell.lastMs };
    remind();
  };
}
