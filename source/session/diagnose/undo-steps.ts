import { reverseOf } from '../../bed/reverse-of.ts';
import type { Step } from '../../steps/step.ts';
import type { MendStep } from '../mend.ts';
import type { Made } from './slipped-run.ts';

/** Moves made, taken back step by step, newest first; `row` rows are left at the end. */
export function undoSteps(made: readonly Made[], row: number): readonly MendStep[] {
  const groups: { readonly step: Step | null; readonly made: Made[] }[] = [];
  for (const one of made) {
    const last = groups.at(-1);
    if (last && last.step === one.step) last.made.push(one);
    else groups.push({ step: one.step, made: [one] });
  }
  return groups
    .map((group, i) => {
      const before = groups[i - 1]?.step?.row ?? row;
      const turnsCounterBack = (group.step?.row ?? before) > before;
      const moves = group.made.toReversed().flatMap(({ before: bed, move }) => reverseOf(bed, move) ?? []);
      return { moves, row: before, turnsCounterBack };
    })
    .toReversed();
}
