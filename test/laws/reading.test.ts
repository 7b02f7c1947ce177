/** The words are complete: who reads a sentence and sees nothing else makes the very moves that the step is made of. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Move } from '../../source/bed/move.ts';
import { metric } from '../../source/shared/units.ts';
import { allSteps } from '../../source/steps/job.ts';
import { sayStep } from '../../source/wording/steps.ts';
import { englishWords, wordsIn } from '../../source/wording/words.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { readMoves } from '../fixtures/read-step.ts';
import { german } from '../fixtures/spoken.ts';
import { tries } from '../tools/tries.ts';

const germanWords = wordsIn(german, metric);

/** A length is said as a tape measure shows it, or rounded up to what is cut: 0.1, 1 or 5 cm. */
const saysLength = (said: number, exact: number): boolean => said - exact > -0.051 && said - exact < 5;

function same(said: Move, made: Move): boolean {
  const [read, due] = [said, made].map((move) => Object.entries(move).toSorted());
  return (
    read?.length === due?.length &&
    (read ?? []).every(([field, value], i) => {
      const [name, exact] = due?.[i] ?? [];
      if (field !== name) return false;
      return field.endsWith('Cm')
        ? saysLength(Number(value), Number(exact))
        : JSON.stringify(value) === JSON.stringify(exact);
    })
  );
}

it('the sentence of every step says the moves that it is made of, in their order, and no others', () => {
  const kinds = new Set<string>();
  fc.assert(
    fc.property(briefFile(), (file) => {
      const wrong: unknown[] = [];
      for (const step of allSteps(jobOf(file))) {
        const sentence = sayStep(step, englishWords);
        const read = readMoves(sentence);
        const alike =
          read.length === step.moves.length && read.every((move, i) => same(move, step.moves[i] as Move));
        if (!alike) wrong.push({ sentence, read, moves: step.moves });
        kinds.add(step.act.kind);
      }
      expect(wrong).toEqual([]);
    }),
    { numRuns: tries(300) },
  );
  expect(kinds.size).toBeGreaterThan(40);
});

it('every sentence is one thing to do, in at most 240 letters, in every language', () => {
  fc.assert(
    fc.property(briefFile(), (file) => {
      const sentences = [...allSteps(jobOf(file))].flatMap((step) =>
        [englishWords, germanWords].map((words) => sayStep(step, words)),
      );
      expect(sentences.filter((sentence) => sentence.length > 240)).toEqual([]);
    }),
    { numRuns: tries(100) },
  );
});

it('a sentence that leaves out a side, a needle or a number is not read as the whole of it', () => {
  const whole =
    'Left edge, increase, one needle out: bring L9 into work, with the 2-prong tool lift loops L8 and L7 to L9 and L8.';
  expect(readMoves(whole)).toEqual([
    { move: 'work', needles: ['L9'] },
    { move: 'transfer', from: ['L8', 'L7'], to: ['L9', 'L8'] },
  ]);
  expect(readMoves('Left edge, increase: with the tool lift loops L8 and L7.')).toEqual([]);
  expect(readMoves('Knit one row with plum.')).toEqual([]);
});
