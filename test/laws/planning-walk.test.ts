/** Every figure of a plan against a walk through the rows that shares no sum with the program. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { planJson } from '../../source/cli/plan.ts';
import { englishWords } from '../../source/wording/words.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { tries } from '../tools/tries.ts';
import { walkBag } from './row-walk.ts';

/** Numbers as they lie in an object, by the way that leads to them. */
function figuresIn(value: unknown, path = ''): readonly (readonly [path: string, value: unknown])[] {
  if (typeof value !== 'object' || value === null) return [[path, value]];
  return Object.entries(value).flatMap(([key, own]) => figuresIn(own, path === '' ? key : `${path}.${key}`));
}

/** Held against brute force in laws of their own, or words. */
const elsewhere = /^(name|colourRuns|warnings|yarnClasses|bed\.savings|size\.smallerDoubt)/;

const runs = tries(1000);

it('random plans are what their rows come to', () => {
  let figures = 0;
  fc.assert(
    fc.property(briefFile(), (file) => {
      const { yarn, ...plan } = planJson(planOf(file), englishWords) as { yarn: readonly object[] };
      const walked = new Map(figuresIn(walkBag(file as never)));
      // The waste yarn, last, is held against the waste rows of the steps.
      const told = figuresIn({ ...plan, yarn: yarn.slice(0, -1) }).filter(([path]) => !elsewhere.test(path));
      expect(told.map(([path]) => path).sort()).toEqual([...walked.keys()].sort());
      for (const [path, value] of told) {
        figures++;
        const own = walked.get(path);
        // Doubts are differentiated in small steps there.
        const near = path.endsWith('UncertaintyCm') ? 1e-6 : 1e-9;
        if (typeof value !== 'number' || typeof own !== 'number') expect(own, path).toBe(value);
        else if (Math.abs(own - value) > near * Math.max(1, Math.abs(value))) expect(own, path).toBe(value);
      }
    }),
    { numRuns: runs },
  );
  expect(figures).toBeGreaterThan(50 * runs);
});
