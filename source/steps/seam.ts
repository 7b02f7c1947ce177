/**
 * The bottom seam: half the rows face the other half along the trailing edge, and a mattress seam takes one bar from
 * each side in turn, one stitch in; the thread is drawn up after every eight bars (common practice: 6 to 8). Then the bag is
 * finished: the ends of its hem sewn together, ends sewn in, brought to the state in which it will be used, and measured, since the next bag is planned from that.
 * The corners of a boxed bottom are sewn across last, while the bag can be measured to the end lying flat.
 */
import type { HandMove } from '../bed/move.ts';
import type { Act } from './act.ts';
import { lapBed } from './hem.ts';
import type { Outline } from './outline.ts';
import type { StepBody } from './step.ts';

/** Bars taken on each side before the thread is drawn up. */
const barsBeforeDrawing = 4;

const drawings = ({ plan }: Outline): number => Math.ceil(plan.seam.barsPerSide / barsBeforeDrawing);

/** Fasten, the ends of a hem, ends in, wash, measure. */
const behind = ({ plan }: Outline): number => (plan.hem ? 5 : 4);

/** A boxed bottom has two corners, each laid flat and sewn across. */
const cornerSteps = ({ plan }: Outline): number => (plan.boxed ? 4 : 0);

export const countSeam = (outline: Outline): number =>
  1 + drawings(outline) + behind(outline) + cornerSteps(outline);

export function seamStep(outline: Outline, local: number): StepBody {
  const { seam, graft, stripes, knittedRows, brief, size, hem } = outline.plan;
  const body = (act: Act, moves: StepBody['moves']): StepBody => ({
    row: knittedRows,
    stripe: null,
    act,
    moves,
    after: lapBed(outline),
  });
  if (local === 0) {
    const tailCm = graft.goesOnToSeam ? null : seam.tailCm;
    return body(
      { kind: 'fold-seam', rowsPerSide: seam.barsPerSide, tailCm, yarn: stripes.at(-1)?.yarn ?? '' },
      tailCm === null ? [] : [{ move: 'measure', lengthCm: tailCm }],
    );
  }
  if (local <= drawings(outline)) {
    const from = (local - 1) * barsBeforeDrawing + 1;
    const through = Math.min(seam.barsPerSide, local * barsBeforeDrawing);
    return body({ kind: 'bars', from, through, of: seam.barsPerSide }, barMoves(through - from + 1));
  }
  const part = local - drawings(outline);
  if (part === 1) return body({ kind: 'fasten-seam' }, [{ move: 'fasten' }]);
  if (hem && part === 2) {
    const joins = hem.sections.length;
    return body(
      { kind: 'join-hem', joins },
      hem.sections.map(() => ({ move: 'fasten' })),
    );
  }
  switch (part - (hem ? 1 : 0)) {
    case 2:
      return body({ kind: 'hide-ends' }, []);
    case 3: {
      const washed = { state: brief.finishState, widthCm: size.widthCm, depthCm: size.depthCm };
      return body({ kind: 'wash', rolls: hem === null, ...washed }, [{ move: 'wash', ...washed }]);
    }
    case 4:
      return body({ kind: 'measure-bag', widthCm: size.widthCm, depthCm: size.depthCm }, []);
    default:
      return body(...cornerAct(outline, part - behind(outline) - 1));
  }
}

/** `done` corner steps lie behind: fold and sew in turn. */
function cornerAct({ plan }: Outline, done: number): readonly [Act, readonly HandMove[]] {
  const { cornerSeamCm: acrossCm = 0, fromTipCm = 0, cornerTailCm: tailCm = 0 } = plan.boxed ?? {};
  const corner = done < 2 ? 1 : 2;
  const yarn = plan.stripes.at(-1)?.yarn ?? '';
  return done % 2 === 0
    ? [
        { kind: 'fold-corner', corner, fromTipCm, acrossCm, tailCm, yarn },
        [{ move: 'measure', lengthCm: tailCm }],
      ]
    : [{ kind: 'sew-corner', corner, acrossCm }, [{ move: 'fasten', corner }]];
}

function barMoves(pairs: number): readonly HandMove[] {
  const bars = Array.from({ length: pairs }, (): HandMove[] => [
    { move: 'bars', side: 'front', count: 1 },
    { move: 'bars', side: 'back', count: 1 },
  ]).flat();
  return [...bars, { move: 'draw-up' }];
}

/** Steps of the seam before the one that takes this bar, from 1: the fold, and the bars drawn up before it. */
export const stepsBeforeBar = (bar: number): number => 1 + Math.floor((bar - 1) / barsBeforeDrawing);
