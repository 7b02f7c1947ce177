/**
 * The thread of the graft followed crossing by crossing. Seen from its knit side a knitted row lies over the ends of the loops that
 * it was drawn through, and behind those loops' legs (common practice, no source). So the drawn thread must come up inside a loop,
 * pass over its end and over the end of the loop it goes down through, and from there behind one leg of that loop and one
 * leg of the next of the same edge.
 */
import { point, segment } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { allNodes, readSvg, type SvgNode, withClass } from '../../../test/fixtures/read-svg.ts';
import { demoPlan, diceBagWith } from '../../../test/fixtures/sheets.ts';
import type { Plan } from '../../planning/plan.ts';
import { allSteps, layOutJob } from '../../steps/job.ts';
import { englishWords } from '../../wording/words.ts';
import { standalone } from './element.ts';
import { graftDiagram } from './graft-diagram.ts';

type Spot = readonly [x: number, y: number];

/** The points of a path of M, L and C, curves in 24 pieces. */
function flattened({ attributes }: SvgNode): readonly Spot[] {
  const spots: Spot[] = [];
  for (const [, command, list = ''] of (attributes.d ?? '').matchAll(/([MLC])([^MLC]*)/g)) {
    const numbers = list.trim().split(/[ ,]+/).map(Number);
    const at = (i: number): Spot => [numbers[2 * i] ?? 0, numbers[2 * i + 1] ?? 0];
    if (command !== 'C') spots.push(at(0));
    else {
      const from = spots.at(-1) as Spot;
      for (let i = 1; i <= 24; i++) spots.push(onCurve([from, at(0), at(1), at(2)], i / 24));
    }
  }
  return spots;
}

/** A cubic Bézier curve (SVG 2, 9.3.6). */
function onCurve([a, b, c, d]: readonly [Spot, Spot, Spot, Spot], t: number): Spot {
  const mix = (i: 0 | 1): number =>
    (1 - t) ** 3 * a[i] + 3 * (1 - t) ** 2 * t * b[i] + 3 * (1 - t) * t ** 2 * c[i] + t ** 3 * d[i];
  return [mix(0), mix(1)];
}

/** Where two lines of points meet, in the order of the first. */
function meetings(one: readonly Spot[], other: readonly Spot[]): readonly Spot[] {
  const sides = (spots: readonly Spot[]) =>
    spots.slice(1).map((to, i) => segment(point(...(spots[i] as Spot)), point(...to)));
  return sides(one).flatMap((side) =>
    sides(other).flatMap((bar) => side.intersect(bar).map(({ x, y }): Spot => [x, y])),
  );
}

interface Crossing {
  readonly loop: string;
  /** The curved end at the gap, or one of the two legs. */
  readonly part: 'end' | 'leg';
  readonly thread: 'over' | 'behind';
}

/** All crossings along the thread. What is drawn later lies over what was drawn before it. */
function crossingsOf(plan: Plan): readonly Crossing[] {
  const nodes = allNodes(readSvg(standalone(graftDiagram(plan, englishWords.sheet))));
  const loops = nodes.filter(({ attributes }) => attributes.class === 'loop');
  const thread = nodes
    .filter(({ attributes }) => attributes.class?.startsWith('thread'))
    .toSorted((a, b) => Number(a.attributes['data-order']) - Number(b.attributes['data-order']));
  return thread.flatMap((piece) => {
    const path = flattened(piece);
    const [start] = path as [Spot];
    return loops
      .flatMap((loop) =>
        meetings(path, flattened(loop)).map((at) => ({
          far: Math.hypot(at[0] - start[0], at[1] - start[1]),
          loop: loop.attributes['data-loop'] ?? '',
          part: partAt(loop, at),
          thread: nodes.indexOf(piece) > nodes.indexOf(loop) ? ('over' as const) : ('behind' as const),
        })),
      )
      .toSorted((a, b) => a.far - b.far)
      .map(({ loop, part, thread: place }) => ({ loop, part, thread: place }));
  });
}

/** The end is the curve, the legs are the straight lines on both sides of it. */
function partAt(loop: SvgNode, [, y]: Spot): 'end' | 'leg' {
  const shoulder = Number(
    /C/.test(loop.attributes.d ?? '') ? /L\S+ (\S+?)C/.exec(loop.attributes.d ?? '')?.[1] : Number.NaN,
  );
  const middle = (loop.attributes['data-loop'] ?? '').startsWith('A') ? y - shoulder : shoulder - y;
  return middle > 2.5 ? 'end' : 'leg';
}

/** What a knitted row does at the entries that the steps name, as far as the drawing goes. */
function crossingsOfRow(plan: Plan): readonly Crossing[] {
  const entries = [...allSteps(layOutJob(plan))].flatMap(({ moves }) =>
    moves.flatMap((move) =>
      move.move === 'graft'
        ? [
            ...(move.down === null ? [] : [{ loop: `${move.edge}${move.down}`, way: 'down' as const }]),
            ...(move.up === null ? [] : [{ loop: `${move.edge}${move.up}`, way: 'up' as const }]),
          ]
        : [],
    ),
  );
  return entries.flatMap(({ loop, way }): Crossing[] => {
    const leg: Crossing = { loop, part: 'leg', thread: 'behind' };
    const end: Crossing = { loop, part: 'end', thread: 'over' };
    return way === 'up' ? [leg, end] : [end, leg];
  });
}

describe.each([
  ['that crawled left, its tail at the mouth', demoPlan('dice-bag')],
  ['that crawled right, its tail at the mouth', demoPlan('card-box-bag')],
  ['that crawled left, its tail at the bottom', diceBagWith({ homeSide: 'left' })],
])('the graft of work %s', (_, plan) => {
  it('runs as the row that it imitates, at every crossing', () => {
    const drawn = crossingsOf(plan);
    expect(drawn).toHaveLength(24);
    expect(drawn).toEqual(crossingsOfRow(plan).slice(0, drawn.length));
  });

  it('numbers its strands on discs, in the order in which they are drawn through', () => {
    const svg = readSvg(standalone(graftDiagram(plan, englishWords.sheet)));
    const over = withClass(svg, 'over').map(flattened);
    const discs = allNodes(svg).filter(({ name }) => name === 'circle');
    expect(discs).toHaveLength(over.length);
    for (const [i, strand] of over.entries()) {
      const [from, to] = [strand[0] as Spot, strand.at(-1) as Spot];
      const { cx, cy } = discs[i]?.attributes ?? {};
      expect(Number(cx)).toBeCloseTo((from[0] + to[0]) / 2, 1);
      expect(Number(cy)).toBeCloseTo((from[1] + to[1]) / 2, 1);
    }
  });
});

it('has the mouth on the side that the work crawled to', () => {
  const loopsFromLeft = (plan: Plan): readonly string[] =>
    withClass(readSvg(standalone(graftDiagram(plan, englishWords.sheet))), 'loop')
      .toSorted((a, b) => (flattened(a)[0]?.[0] ?? 0) - (flattened(b)[0]?.[0] ?? 0))
      .map(({ attributes }) => attributes['data-loop'] ?? '')
      .filter((loop) => loop.startsWith('A'));
  expect(loopsFromLeft(demoPlan('dice-bag'))).toEqual(['A1', 'A2', 'A3']);
  expect(loopsFromLeft(demoPlan('card-box-bag'))).toEqual(['A3', 'A2', 'A1']);
});
