/**
 * The hem, while the strip still lies open between its waste rows: for each section the needles, the mouth edge hung on them with
 * the purl side to the front, plain rows, a loose one to fold on, plain rows, the picked-up loops hung on the same needles, a loose
 * row through both, and a chain that closes it (common practice, from memory). Hung so, the chain comes to lie on the inside.
 * An even number of passes ends at home.
 */
import { opposite, type Side } from '../bed/bed.ts';
import { evenParts, type Hem } from '../planning/hem.ts';
import type { Act } from './act.ts';
import { bareBed, counterAt } from './bed-after.ts';
import { closedBed } from './closing-row.ts';
import type { Outline } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';

/** Needles, edge, yarn, rows, fold, rows, edge again, closing row, chain. */
const sectionSteps = 9;

export const countHem = ({ plan: { hem } }: Outline): number =>
  hem ? hem.sections.length * sectionSteps : 0;

/** Sections that are chained off once so many steps of the hem are done. */
export const hemsDone = (steps: number): number => Math.floor(steps / sectionSteps);

/** The bed while the work is in the lap, the hem closed where there is one. */
export const lapBed = (outline: Outline): BedAfter => {
  const { hem, brief } = outline.plan;
  return hem ? bareBed(outline, brief.homeSide, counterAt(outline, hem.passes)) : closedBed(outline);
};

/** The middle of the bed, as for the cord. */
function sectionNeedles({ needles }: Outline, count: number): readonly string[] {
  const first = Math.floor((needles.length - count) / 2);
  return needles.slice(first, first + count);
}

/** Hung by its mouth, purl side to the front, the strip has its start on the side away from the crawl's end. */
const startSide = ({ plan }: Outline): Side => plan.brief.crawl;

/** Sections go from left to right or from right to left, as the strip runs from its start to its end. */
export function hemStep(outline: Outline, local: number): StepBody {
  const { plan } = outline;
  const hem = plan.hem as Hem;
  const number = Math.floor(local / sectionSteps);
  const count = hem.sections[number] ?? 0;
  const names = sectionNeedles(outline, count);
  const [first = '', last = ''] = [names[0], names.at(-1)];
  const { homeSide: home, bed } = plan.brief;
  const away = opposite(home);
  const before = number === 0 ? closedBed(outline) : lapBed(outline);
  const setsCounter = !bed.without.includes('counter');
  const onBed = (feeder: string | null, passes: number): BedAfter => ({
    ...bareBed(outline, passes % 2 === 0 ? home : away, counterAt(outline, passes)),
    left: first,
    right: last,
    stitches: count,
    feeder,
  });
  const body = (act: Act, moves: StepBody['moves'], after: BedAfter): StepBody => ({
    row: plan.knittedRows,
    stripe: null,
    act,
    moves,
    after,
  });
  const section = { section: number + 1, of: hem.sections.length, first, last, count };
  const { rows, passes, yarn } = hem;
  const layer = (which: 'outer' | 'inner', from: number, through: number): StepBody =>
    body(
      {
        kind: 'hem-rows',
        layer: which,
        from,
        through,
        of: passes,
        to: through % 2 === 0 ? home : away,
      },
      Array.from({ length: rows }, (_, i) => ({
        move: 'knit',
        to: (from + i) % 2 === 0 ? home : away,
      })),
      onBed(yarn, through),
    );
  const row = (kind: 'fold-row' | 'hem-close', at: number): StepBody => {
    const to = at % 2 === 0 ? home : away;
    return body({ kind, number: at, of: passes, to }, [{ move: 'knit', to }], onBed(yarn, at));
  };
  switch (local % sectionSteps) {
    case 0:
      return body(
        { kind: 'set-hem-needles', ...section, carriage: home, setsCounter },
        [
          { move: 'stand', side: home },
          { move: 'work', needles: names },
          ...(setsCounter ? [{ move: 'counter', rows: 0 } as const] : []),
        ],
        { ...bareBed(outline, home, setsCounter ? 0 : before.counter) },
      );
    case 1: {
      const edgeRows = evenParts(plan.knittedRows, hem.sections.length)[number] ?? 0;
      return body(
        { kind: 'pick-up', ...section, rows: edgeRows, startAt: startSide(outline) },
        [{ move: 'pick-up', of: 'edge', left: first, right: last }],
        onBed(null, 0),
      );
    }
    case 2:
      return body({ kind: 'thread-hem', yarn }, [{ move: 'feed', yarn }], onBed(yarn, 0));
    case 3:
      return layer('outer', 1, rows);
    case 4:
      return row('fold-row', rows + 1);
    case 5:
      return layer('inner', rows + 2, 2 * rows + 1);
    case 6:
      return body(
        { kind: 'hang-fold', first, last, count },
        [{ move: 'pick-up', of: 'first-row', left: first, right: last }],
        onBed(yarn, passes - 1),
      );
    case 7:
      return row('hem-close', passes);
    default: {
      // From the far edge to the one where the yarn ends.
      const [from, to] = home === 'left' ? [last, first] : [first, last];
      return body(
        { kind: 'bind-off', yarn, from, to, count },
        [{ move: 'cut', yarn }, { move: 'bind-off', from, to }, { move: 'fasten' }],
        lapBed(outline),
      );
    }
  }
}
