/**
 * Every text of the bench can be read, and neighbouring stripes told apart, in all schemes and depths. Contrast as culori
 * computes it (WCAG 2.2 asks for 4.5 to 1).
 */

import { readFileSync } from 'node:fs';
import { wcagContrast } from 'culori';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seenBy, visionTypes } from '../../source/planning/shades.ts';
import { brushFor } from '../../source/screen/bench/rows/row.ts';
import { colourDifference, labOf, linear, parseColour } from '../../source/shared/colour.ts';
import { filled, formatLine } from '../../source/sheet/terminal/ansi.ts';
import { benchOnScreen, type Cell, show } from '../fixtures/drawn-screen.ts';
import { lookOf, type Scheme, schemes } from '../fixtures/palettes.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import {
  demoBags,
  demoJob,
  differentBags,
  stepsOfAllKinds,
  viewAfter,
} from '../fixtures/steps-of-all-kinds.ts';
import { tries } from '../tools/tries.ts';

const depths = ['true', '256', '16', 'none'] as const;
const leastContrast = 4.5;
const leastDifference = 10;

/** The VGA console has 16 colours and no more; all others may have any number. */
const schemesWith = (depth: (typeof depths)[number]): readonly Scheme[] =>
  Object.entries(schemes)
    .filter(([name]) => name !== 'vga' || depth === '16' || depth === 'none')
    .map(([, scheme]) => scheme);

const contrasts = new Map<string, number>();
function contrastOf(ink: string, ground: string): number {
  const key = ink + ground;
  const known = contrasts.get(key) ?? wcagContrast(ink, ground);
  contrasts.set(key, known);
  return known;
}

const isText = ({ text }: Cell): boolean => /[\p{L}\p{N}!►◄]/u.test(text);

/**
 * In the teal scheme text is pale as it is, and how pale it gets when dim is the scheme's own affair; nothing is said in dim
 * text alone.
 */
function unreadable(cells: readonly (readonly Cell[])[], scheme: Scheme): readonly string[] {
  return cells.flat().flatMap((cell) => {
    const { ink, ground } = lookOf(cell, scheme);
    const least = cell.dim && scheme === schemes.teal ? 0 : leastContrast;
    const contrast = contrastOf(ink, ground);
    return isText(cell) && contrast < least ? [`${cell.text}: ${ink} on ${ground}, ${contrast}`] : [];
  });
}

describe.each(['dice-bag', ...differentBags])('%s', (bag) => {
  // Without colours all yarns are alike.
  it.each(bag === 'dice-bag' ? depths : depths.slice(0, 3))(
    'can be read at every kind of step, colours: %s',
    async (depth) => {
      for (const view of stepsOfAllKinds(bag)) {
        for (const large of bag === 'dice-bag' ? [false, true] : [false]) {
          const cells = await benchOnScreen(view, depth, large);
          for (const scheme of schemesWith(depth)) expect(unreadable(cells, scheme)).toEqual([]);
        }
      }
    },
  );
});

const colour = fc
  .integer({ min: 0, max: 0xffffff })
  .map((value) => `#${value.toString(16).padStart(6, '0')}`);

const dice = JSON.parse(readFileSync('demo/dice-bag.json', 'utf8'));
const jobWith = (plum: string, mint: string) =>
  jobOf({
    ...dice,
    yarns: { plum: { ...dice.yarns.plum, colour: plum }, mint: { ...dice.yarns.mint, colour: mint } },
  });

/** Half of the rows are knitted: knitted stripes stand beside one another in the ruler. */
const viewAtRow = (job: ReturnType<typeof jobOf>, row: number) => {
  for (let done = 0; done < job.stepCount; done++) {
    const view = viewAfter(job, done);
    if (view.rows.at === row && view.step?.act.kind === 'pass') return view;
  }
  throw new Error('no pass');
};

describe('yarns of any colours', () => {
  it('can be read on', async () => {
    await fc.assert(
      fc.asyncProperty(colour, colour, async (plum, mint) => {
        const view = viewAtRow(jobWith(plum, mint), 32);
        for (const depth of depths) {
          const cells = await benchOnScreen(view, depth);
          for (const scheme of schemesWith(depth)) expect(unreadable(cells, scheme)).toEqual([]);
        }
      }),
      { numRuns: tries(8, 4) },
    );
  });

  it('are told apart in the ruler by colour, to all eyes, or by a sign', async () => {
    await fc.assert(
      fc.asyncProperty(colour, colour, async (plum, mint) => {
        const view = viewAtRow(jobWith(plum, mint), 32);
        for (const depth of depths) {
          const cells = await benchOnScreen(view, depth);
          for (const scheme of schemesWith(depth)) {
            const [first, second] = rulerCells(cells);
            expect(first && second && areApart(first, second, scheme), `${plum} ${mint} ${depth}`).toBe(true);
          }
        }
      }),
      { numRuns: tries(12, 6) },
    );
  });
});

it.each(demoBags.flatMap((bag) => depths.map((depth) => [bag, depth] as const)))(
  'neighbouring stripes of the %s are told apart, colours: %s',
  async (bag, depth) => {
    const { plan } = demoJob(bag);
    const { signs } = brushFor(plan, depth, false);
    const stripes = plan.stripes.map(({ yarn }) => signs.get(yarn)).filter((sign) => sign !== undefined);
    const lines = stripes.map((sign) => formatLine([filled(sign, 1, depth)], depth));
    const cells = (await show(lines, 4, stripes.length)).cells.map(([cell]) => cell);
    for (const [i, cell] of cells.entries()) {
      const next = cells[(i + 1) % cells.length];
      const isSameYarn = stripes[i] === stripes[(i + 1) % stripes.length];
      for (const scheme of schemesWith(depth))
        expect(cell && next && (isSameYarn || areApart(cell, next, scheme)), `stripe ${i + 1}`).toBe(true);
    }
  },
);

/** The right cell of the first stripe and of the second: each is two cells wide. */
const rulerCells = (cells: readonly (readonly Cell[])[]): readonly (Cell | undefined)[] => {
  const row = cells[cells.findIndex((line) => line.some(({ text }) => text === '▲')) - 1];
  return [row?.[2], row?.[4]];
};

function areApart(one: Cell, other: Cell, scheme: Scheme): boolean {
  if (one.text !== other.text) return true;
  const [a, b] = [one, other].map((cell) => linear(parseColour(lookOf(cell, scheme).ground)));
  if (!a || !b) return false;
  const differences = [
    colourDifference(labOf(a), labOf(b)),
    ...visionTypes.map((type) => colourDifference(labOf(seenBy(type, a)), labOf(seenBy(type, b)))),
  ];
  return differences.every((difference) => difference >= leastDifference);
}

it('measures what it should: yellow on white is unreadable, and its own look-alike is not apart', () => {
  const cell = { text: 'a', ink: 'ansi 3', ground: null, bold: false, dim: false, inverse: false };
  expect(unreadable([[cell]], schemes.light as Scheme)).toHaveLength(1);
  expect(areApart(cell, cell, schemes.light as Scheme)).toBe(false);
});

it('has look-alike yarns to tell apart', async () => {
  const view = viewAtRow(jobWith('#6b2d5c', '#6b3560'), 32);
  const [first, second] = rulerCells(await benchOnScreen(view, 'true'));
  expect(first?.text).not.toBe(second?.text);
});

it('shows the demo bags', () => {
  for (const bag of demoBags) expect(demoJob(bag).stepCount).toBeGreaterThan(50);
});
