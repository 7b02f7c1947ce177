/** Whatever stands in a brief, it gives a plan or one clean sentence: the program never falls over it. */

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseBrief } from '../../source/planning/parse-brief.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { formatFault } from '../../source/wording/faults.ts';
import { englishWords } from '../../source/wording/words.ts';
import { briefWith } from '../contract/broken-brief.ts';
import { tries } from '../tools/tries.ts';

const fields = [
  'name',
  'bed',
  'bed.needles',
  'bed.pitchMm',
  'bed.marginNeedles',
  'swatch',
  'swatch.stitches',
  'swatch.heightCm',
  'swatch.loopLengthMm',
  'bag',
  'bag.stitches',
  'bag.rows',
  'crawl',
  'edgeStitches',
  'shapeEveryRows',
  'yarns',
  'yarns.plum',
  'yarns.plum.colour',
  'yarns.plum.metresPer100g',
  'yarns.__proto__',
  'yarns.constructor',
  'stripes',
  'stripes.0',
  'stripes.0.yarn',
  'stripes.0.rows',
  'scraps',
  'waste.yarn',
  'cord',
  'cord.tieCm',
  'toString',
];

/** Numbers near the limits, names, and any JSON at all. */
const value = fc.oneof(
  fc.constantFrom('0', '-1', '1', '2', '3', '4', '8', '10', '400', '0.2', '60', '1e999', '-1e999', '1e-300'),
  fc.constantFrom('null', 'true', '""', '"plum"', '"waste"', '"left"', '"#000000"', '[]', '{}', '[{}]'),
  fc.json({ maxDepth: 3 }),
);

/** The sentence for a brief; null when it is planned. */
function sentenceFor(text: string): string | null {
  const brief = parseBrief(text);
  if (!brief.ok) return formatFault(brief.fault, englishWords);
  const plan = planBag(brief.value.brief);
  return plan.ok ? null : formatFault(plan.fault, englishWords);
}

function expectClean(sentence: string | null): void {
  if (sentence === null) return;
  expect(sentence).toMatch(/^[^\p{Cc}\u202a-\u202e\u2066-\u2069]+[.?]$/u);
  expect(sentence).not.toMatch(/undefined|\[object|NaN mm|Infinity/);
  expect(sentence.length).toBeLessThan(400);
}

it('gives a plan or a sentence for any value in any field', () => {
  fc.assert(
    fc.property(fc.constantFrom(...fields), value, (field, json) =>
      expectClean(sentenceFor(briefWith({ [field]: json }))),
    ),
    { numRuns: tries(1500) },
  );
});

it('gives a sentence for any JSON that is no brief', () => {
  fc.assert(
    fc.property(fc.json({ maxDepth: 4 }), (json) => {
      const sentence = sentenceFor(json);
      expect(sentence).not.toBeNull();
      expectClean(sentence);
    }),
    { numRuns: tries(500) },
  );
});

it('gives a sentence for any text', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const sentence = sentenceFor(text);
      expect(sentence).not.toBeNull();
      expectClean(sentence);
    }),
    { numRuns: tries(1000) },
  );
});
