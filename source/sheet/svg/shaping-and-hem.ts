/** The first shaping move of the bag on its own needles, both edges as they stand on the bed, before and after. */

import type { Hem } from '../../planning/hem.ts';
import type { Plan } from '../../planning/plan.ts';
import { layOutJob, stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { sayActOrNull } from '../../wording/by-kind.ts';
import type { Words } from '../../wording/words.ts';
import type { Point } from '../geometry/shape.ts';
import { type Drawn, drawingOf, measure, reaching, within, written } from './drawn.ts';
import { type Drawing, element, lineFrom, pair, palette, strokePath, textWidth } from './element.ts';

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

/** On paper: a layer of the hem, the gap between the two, and how far the cloth goes on below the cord. */
const [layerMm, gapMm, belowMm] = [17, 5, 6] as const;

/** The hem from the side, its fold up and the inside of the bag to the left; what it measures is written to scale, layers apart are not. */
export function hemDiagram(hem: Hem, { sheet, amounts }: Words): Drawing {
  const cordY = (layerMm * hem.foldToCordCm) / hem.heightCm;
  // Where the hem is low against what lies above the cord, the cloth between is drawn shortened.
  const cord = Math.min(cordY, layerMm + 14);
  const [inner, outer] = [-gapMm, 0] as const;
  const foot = cord + belowMm;
  const cloth = `M${pair([outer, foot])}V${gapMm / 2}A${gapMm / 2} ${gapMm / 2} 0 0 0 ${pair([inner, gapMm / 2])}V${layerMm}`;
  const reach: readonly Point[] = [
    [inner - 1, -0.8],
    [outer + 1, foot],
  ];
  // Names stand below each other, however near what they name.
  const cordName = Math.abs(cord - layerMm) < 3.4 ? layerMm + 4.3 : cord + 0.9;
  return drawingOf(
    sheet.shows.hem(hem.heightCm),
    [
      reaching(strokePath(cloth, { 'stroke-width': 1.6, stroke: palette.rule, class: 'hem' }), reach),
      within(
        lineFrom([inner - 0.8, layerMm], [outer + 0.8, layerMm], {
          stroke: palette.thread,
          'stroke-width': 0.9,
          class: 'chain',
        }),
      ),
      within(element('circle', { cx: outer, cy: cord, r: 1, fill: palette.ink })),
      written([inner - 2.2, layerMm + 0.9], sheet.hemChain, { anchor: 'end', size: 2.5 }),
      written([inner - 2.2, gapMm / 2], sheet.hemFold, { anchor: 'end', size: 2.5 }),
      written([inner - 2.2, cordName], sheet.hemCord, { anchor: 'end', size: 2.5 }),
      written([inner - 2.2, Math.max(foot, cordName + 3.4)], sheet.hemInside, { anchor: 'end', size: 2.5 }),
      ...measure([outer + 4, 0], [outer + 4, layerMm], amounts.length(hem.heightCm)),
      ...measure([outer + 16, 0], [outer + 16, cord], amounts.length(hem.foldToCordCm)),
    ],
    null,
  );
}
