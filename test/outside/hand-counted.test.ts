/** One small bag, counted step by step with pencil and paper, held against the steps the program gives. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Move } from '../../source/bed/move.ts';
import { allSteps } from '../../source/steps/job.ts';
import { phases, type Step } from '../../source/steps/step.ts';
import { jobOf } from '../fixtures/plan-of.ts';

const tinyBag = {
  name: 'One die',
  bed: { needles: 20, pitchMm: 6, marginNeedles: 2, place: 'end' },
  swatch: { stitches: 20, rows: 20, widthCm: 10, heightCm: 9, loopLengthMm: 15 },
  bag: { stitches: 8, rows: 8 },
  crawl: 'left',
  homeSide: 'right',
  edgeStitches: 2,
  shapeEveryRows: 2,
  yarns: {
    plum: { colour: '#6b2d5c', metresPer100g: 190 },
    mint: { colour: '#9fd8c2', metresPer100g: 190 },
  },
  stripes: [
    { yarn: 'plum', rows: 2 },
    { yarn: 'mint', rows: 2 },
  ],
  waste: { yarn: 'grey', rows: 2, ravel: 'cord' },
  cord: { stitches: 3, yarn: 'mint', tieCm: 0.3 },
};

/** The table's lines by phase, without the spaces that only line up its columns. */
function readTable(): ReadonlyMap<string, readonly string[]> {
  const text = readFileSync(new URL('hand-counted.txt', import.meta.url), 'utf8');
  const parts = text.split(/^== /m).slice(1);
  return new Map(
    parts.map((part) => {
      const [phase = '', ...lines] = part.replace(/ +/g, ' ').trim().split(/\n+/);
      return [phase, lines];
    }),
  );
}

function moveLine(move: Move): string {
  switch (move.move) {
    case 'work':
    case 'rest':
      return `${move.move} ${move.needles.join(' ')}`;
    case 'transfer':
      return `transfer ${move.from.join(' ')} to ${move.to.join(' ')}`;
    case 'bars':
      return `${move.side} ${move.count}`;
    case 'wash':
      return `wash ${move.state} ${move.widthCm.toFixed(2)} ${move.depthCm.toFixed(2)}`;
    case 'graft':
      return ['graft', move.edge, move.down, move.up].filter((part) => part !== null).join(' ');
    case 'measure':
      return `measure ${Number(move.lengthCm.toFixed(2))}`;
    default:
      return Object.values(move).join(' ');
  }
}

function stepLine({ row, stripe, moves, after }: Step): string {
  const edges = `${after.left ?? '-'} ${after.right ?? '-'} ${after.stitches}`;
  const rest = `${after.carriage} ${after.feeder ?? '-'} ${after.shapings}`;
  const hands = moves.map(moveLine).join(', ');
  return `${row} ${stripe ?? '-'} | ${hands} | ${edges} | ${rest} | ${after.counter}`.replace(/ +/g, ' ');
}

describe('a bag of 8 stitches and 8 rows counted by hand', () => {
  const table = readTable();
  const steps = [...allSteps(jobOf(tinyBag))];

  it.each(phases)('takes the same steps: %s', (phase) => {
    const lines = steps.filter((step) => step.phase === phase).map(stepLine);
    expect(lines).toEqual(table.get(phase) ?? []);
  });

  it('numbers the steps from 1, phase after phase', () => {
    const lengths = phases.map((phase) => table.get(phase)?.length ?? 0);
    expect(steps.map(({ step }) => step)).toEqual(
      Array.from({ length: lengths.reduce((sum, length) => sum + length, 0) }, (_, i) => i + 1),
    );
    expect(steps.map(({ phase }) => phase)).toEqual(
      phases.flatMap((phase, i) => Array(lengths[i]).fill(phase)),
    );
  });
});
