/** The sums that `why` shows are worked out again by mathjs, an independent calculator, for every bag of the demo. */
import { readdirSync, readFileSync } from 'node:fs';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { completeLine, parseLine } from '../../source/chat/parse-line.ts';
import { imperial, metric, type Units } from '../../source/shared/units.ts';
import { explainWhy, findReason, reasons } from '../../source/wording/explain.ts';
import { namesOf, stemOf, titleOf } from '../../source/wording/named.ts';
import { englishWords, inEnglish, wordsIn } from '../../source/wording/words.ts';
import { openMemoryBench } from '../fixtures/bench-in-memory.ts';
import { planOf } from '../fixtures/plan-of.ts';

const plans = readdirSync('demo')
  .filter((name) => name.endsWith('.json'))
  .map((name) => [name, planOf(readFileSync(`demo/${name}`, 'utf8'))] as const);
const diceBag = planOf(readFileSync('demo/dice-bag.json', 'utf8'));

interface Sum {
  readonly left: string;
  readonly right: number;
  /** Half of the last place shown. */
  readonly within: number;
}

const unitMm: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4 };

/** `√((31 × 4.8 mm)² + …) = 27.4 cm` as what a calculator reads, lengths in millimetres. */
function sumsIn(text: string): readonly Sum[] {
  return text.split(/; |: (?=\d)/).flatMap((part) => {
    const found =
      /^(?<left>.*[×/+−√].*) = (?<value>\d+(?:\.(?<places>\d+))?)(?: (?<unit>mm|cm|in|degrees))?/.exec(part);
    if (!found?.groups) return [];
    const { left = '', value = '', places = '', unit = '' } = found.groups;
    const scale = unitMm[unit] ?? 1;
    const inMm = left.replace(
      /(\d+(?:\.\d+)?) (mm|cm|in)\b/g,
      (_, number, of) => `(${number} * ${unitMm[of]})`,
    );
    const read = inMm
      .replace(/√([\d.]+)/g, 'sqrt($1)')
      .replaceAll('√', 'sqrt')
      .replaceAll('²', '^2')
      .replaceAll('×', '*')
      .replaceAll('−', '-')
      .replace(/arctan\((.*)\)$/, 'atan($1) * 180 / pi')
      .replace(/ m\b/, '');
    return [{ left: read, right: Number(value) * scale, within: (0.5 * scale) / 10 ** places.length }];
  });
}

const hereOf = (lines: readonly string[]): string =>
  lines
    .find((line) => line.startsWith('  This bag: '))
    ?.slice('  This bag: '.length)
    .replace(/\.$/, '') ?? '';

const unitSystems: readonly (readonly [string, Units])[] = [
  ['metric', metric],
  ['imperial', imperial],
];

describe.each(unitSystems)('the sums in %s units', (_, units) => {
  it.each(plans)('of %s come out', (_, plan) => {
    const sums = reasons.flatMap((reason) =>
      sumsIn(hereOf(explainWhy(titleOf(reason, englishWords), plan, wordsIn(inEnglish, units)))),
    );
    expect(sums.length).toBeGreaterThan(12);
    for (const { left, right, within } of sums) {
      const off = Math.abs(evaluate(left) - right);
      // What stands in the sum is itself rounded, to a part in a hundred at the worst.
      expect(off, `${left} = ${right}`).toBeLessThanOrEqual(within + right / 100);
    }
  });
});

it('shows the numbers of the plan and not of another', () => {
  for (const [, plan] of plans) {
    expect(hereOf(explainWhy('closing row', plan, englishWords))).toBe(
      `${plan.rows} − 1 = ${plan.knittedRows}`,
    );
    expect(hereOf(explainWhy('graft', plan, englishWords))).toBe(
      `2 × ${plan.stitches} − 1 = ${plan.graft.entries}`,
    );
  }
  // Worked by hand: 3 × 46 × 6 mm; 1.1 × 46 × 17.1 mm; the larger and 15 cm (rule of thumb).
  expect(hereOf(explainWhy('why 3 times the width?', diceBag, englishWords))).toBe(
    '3 × 46 × 6 mm = 82.8 cm; 1.1 × 46 × 17.1 mm = 86.5 cm; 86.5 cm + 15 cm = 101.5 cm',
  );
});

it.each([
  ['why width', 'width'],
  ['why 3 times the width?', 'tail'],
  ['why three times', 'tail'],
  ['why tail', 'tail'],
  ['why yarn', 'yarn'],
  ['why so much yarn?', 'yarn'],
  ['why eyelets', 'eyelets'],
  ['why is there a closing row?', 'closing-row'],
  ['why angle', 'angle'],
  ['Why rehang?', 'rehang'],
  ['why do I rehang the work?', 'rehang'],
  ['why two rows', 'two-rows'],
  ['why every second row', 'two-rows'],
  ['why steam', 'steam'],
  ['why is the bag smaller than I asked', 'rows'],
  ['why an even number of holes?', 'eyelets'],
  ['why out of work', 'out-of-work'],
  ['why rest my hands', 'pause'],
  ['why waste rows', 'waste'],
  ['why does the carriage wait at home', 'home-side'],
])('finds the topic in %j', (line, id) => {
  const intent = parseLine(line, englishWords);
  expect(
    intent.ok && intent.value.kind === 'why' && findReason(intent.value.about ?? '', englishWords)?.id,
  ).toBe(id);
});

it('is completed', () => {
  expect(completeLine('why clo')).toEqual(['why closing-row']);
  expect(completeLine('words clo')).toEqual(['words closing-row']);
});

it('lists the topics where none was named, or none is known', () => {
  for (const about of [null, 'zebras']) {
    const told = explainWhy(about, diceBag, englishWords).join(' ');
    for (const reason of reasons) expect(told).toContain(titleOf(reason, englishWords));
  }
});

it('explains the word where there is no reason', () => {
  expect(explainWhy('girth of a mast', diceBag, englishWords).join(' ')).toContain('half the girth');
  expect(explainWhy('the mast', diceBag, englishWords)[0]).toMatch(/^Mast: The stand/);
});

it('names a source with every topic, and no name twice', () => {
  for (const reason of reasons) {
    expect(explainWhy(titleOf(reason, englishWords), diceBag, englishWords).at(-1)).toMatch(
      /^ {2}Source: .{8,}\.$/,
    );
  }
  const stems = reasons.flatMap((reason) => [...new Set(namesOf(reason, englishWords).map(stemOf))]);
  expect(stems.filter((one, i) => stems.indexOf(one) !== i)).toEqual([]);
});

it('is answered at the prompt, with or without a question mark, and never taken for a slip of the keys', () => {
  const bench = openMemoryBench();
  for (const [i, line] of [
    'why',
    'why?',
    'Why tail',
    'why tail?',
    '/why the width',
    'warum tail',
  ].entries()) {
    bench.type(line, 4000 * (i + 1));
    expect(bench.store.get().lines.at(-1)?.tone, line).toBe('answer');
  }
});
