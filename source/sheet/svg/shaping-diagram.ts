/** The first shaping move of the bag on its own needles, both edges as they stand on the bed, before and after. */
import type { Plan } from '../../planning/plan.ts';
import { layOutJob, stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { sayActOrNull } from '../../wording/by-kind.ts';
import type { Words } from '../../wording/words.ts';
import { type Drawn, drawingOf, reaching, written } from './drawn.ts';
import { type Drawing, element, lineFrom, palette } from './element.ts';
import { textWidth } from './text-width.ts';

type DrawnNeedle = 'out-of-work' | 'loop' | 'empty' | 'doubled';

interface EdgePicture {
  readonly side: 'left' | 'right';
  /** From left to right. */
  readonly needles: readonly {
    readonly name: string;
    readonly before: DrawnNeedle;
    readonly after: DrawnNeedle;
  }[];
}

const size = 4.6;
const rowMm = 6.3;

export function shapingDiagram(plan: Plan, words: Words): Drawing {
  const { sheet, bench } = words;
  const edges = edgesOf(plan);
  const labels = [bench.now, bench.make];
  const labelMm = Math.max(...labels.map((label) => textWidth(label, size))) + 3;
  let x = labelMm;
  const parts: Drawn[] = labels.map((label, i) =>
    written([0, (i + 1) * rowMm], label, { size, colour: palette.quiet }),
  );
  for (const { needles } of edges) {
    const pitch = Math.max(...needles.map(({ name }) => textWidth(name, size))) + 2;
    const middle = (i: number): number => x + (i + 0.5) * pitch;
    for (const [i, { name, before, after }] of needles.entries()) {
      const weight = before === after ? {} : { weight: 700 };
      parts.push(
        written([middle(i), 0], name, { size, anchor: 'middle', ...weight }),
        needle(before, middle(i), rowMm - 1.6),
        needle(after, middle(i), 2 * rowMm - 1.6),
      );
    }
    x += needles.length * pitch + 10;
  }
  parts.push(...legend(sheet));
  return drawingOf(
    [sheet.shows.shaping, ...firstMove(plan).map(({ act }) => sayActOrNull(words.inShort, act))].join(' '),
    parts,
    { cloth: 'purl', text: sheet.purlSide },
    size,
  );
}

/** Both edges from left to right; only one where the bag has no move. */
function edgesOf(plan: Plan): readonly EdgePicture[] {
  const steps = firstMove(plan);
  const edges = steps.map((step): EdgePicture => {
    const { act } = step;
    const transfer = step.moves.find((move) => move.move === 'transfer');
    if (!transfer || (act.kind !== 'increase' && act.kind !== 'decrease'))
      throw new Error('not a shaping move');
    const isOut = act.kind === 'increase';
    // Outermost first: on the way out the new needle, on the way in the one that is emptied.
    const touched = isOut
      ? [...transfer.to, ...transfer.from.slice(-1)]
      : [...transfer.from, ...transfer.to.slice(-1)];
    const looks = touched.map((name, i) => {
      const isOuter = i === 0;
      const isInner = i === touched.length - 1;
      if (isOut)
        return { name, before: isOuter ? 'out-of-work' : 'loop', after: isInner ? 'empty' : 'loop' } as const;
      return { name, before: 'loop', after: isOuter ? 'out-of-work' : isInner ? 'doubled' : 'loop' } as const;
    });
    const needles = act.side === 'left' ? looks : looks.toReversed();
    return { side: act.side, needles };
  });
  return edges.toSorted((a, b) => (a.side === b.side ? 0 : a.side === 'left' ? -1 : 1));
}

/** What the signs mean, in a line below. */
function legend({ needles }: Words['sheet']): readonly Drawn[] {
  const signs = [
    ['empty', needles.empty],
    ['doubled', needles.doubled],
    ['out-of-work', needles.outOfWork],
  ] as const;
  const y = 3 * rowMm;
  let x = 0;
  return signs.flatMap(([look, text]) => {
    const at = x;
    x += textWidth(text, size) + 9;
    return [needle(look, at + 2.2, y - 1.6), written([at + 5.4, y], text, { size, colour: palette.quiet })];
  });
}

function firstMove(plan: Plan): readonly Step[] {
  const job = layOutJob(plan);
  for (let number = 1; number < job.stepCount; number++) {
    const step = stepAt(job, number);
    if (step.act.kind === 'increase') return [step, stepAt(job, number + 1)];
  }
  return [];
}

function needle(look: DrawnNeedle, x: number, y: number): Drawn {
  const reach = [
    [x - 2.2, y - 2.2],
    [x + 2.2, y + 2.2],
  ] as const;
  if (look === 'out-of-work') {
    return reaching(
      lineFrom([x - 1.8, y], [x + 1.8, y], { stroke: palette.rule, 'stroke-width': 0.8 }),
      reach,
    );
  }
  const ring = (r: number, fill: string): string =>
    element('circle', { cx: x, cy: y, r, fill, stroke: palette.ink, 'stroke-width': 0.45 });
  if (look === 'empty') return reaching(ring(1.9, palette.paper), reach);
  return reaching(
    look === 'loop' ? ring(1.9, palette.ink) : ring(2.2, palette.paper) + ring(1.2, palette.ink),
    reach,
  );
}
