/** What a shaping move does to the needles of both edges, before and after, outermost needles drawn at the outside. */

import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type Drawing, element, palette, textAt } from './element.ts';

type NeedleLook = 'resting' | 'loop' | 'empty' | 'doubled';

const labelMm = 9;
const top = 6;
const rowStep = 6;
const widthMm = 52;

export function shapingDiagram({ brief }: Plan, words: Words): Drawing {
  const count = brief.edgeStitches + 3;
  const loops = (many: number): NeedleLook[] => Array.from({ length: many }, () => 'loop');
  const leading = {
    before: ['resting', ...loops(count - 1)] as NeedleLook[],
    after: [...loops(brief.edgeStitches), 'empty', ...loops(count - 1 - brief.edgeStitches)] as NeedleLook[],
  };
  const trailing = {
    before: loops(count),
    after: [
      'resting',
      ...loops(brief.edgeStitches - 1),
      'doubled',
      ...loops(count - 1 - brief.edgeStitches),
    ] as NeedleLook[],
  };
  const [left, right] = brief.crawl === 'left' ? [leading, trailing] : [trailing, leading];
  const names = [words.say`leading edge`, words.say`trailing edge`];
  const [leftName = '', rightName = ''] = brief.crawl === 'left' ? names : names.toReversed();
  const pitch = Math.min(3.8, (widthMm - labelMm - 4) / (2 * count));
  const rightFrom = widthMm - count * pitch;
  const draw = (looks: readonly NeedleLook[], from: number, row: number, mirrored: boolean): string =>
    (mirrored ? looks.toReversed() : looks)
      .map((look, i) => needle(look, from + (i + 0.5) * pitch, top + row * rowStep))
      .join('');
  return {
    widthMm,
    heightMm: 19.6,
    title: words.say`A shaping move: the outer loops go one needle out at the leading edge and one needle in at the trailing edge`,
    body: [
      textAt([labelMm + (count * pitch) / 2, 2.6], leftName, { anchor: 'middle', size: 2.3 }),
      textAt([rightFrom + (count * pitch) / 2, 2.6], rightName, { anchor: 'middle', size: 2.3 }),
      textAt([0, top + 1], words.say`before`, { size: 2.3, colour: palette.quiet }),
      textAt([0, top + rowStep + 1], words.say`after`, { size: 2.3, colour: palette.quiet }),
      draw(left.before, labelMm, 0, false),
      draw(left.after, labelMm, 1, false),
      draw(right.before, rightFrom, 0, true),
      draw(right.after, rightFrom, 1, true),
      key('resting', words.say`resting`, 1.5),
      key('empty', words.say`empty, working`, 14),
      key('doubled', words.say`two loops`, 36),
    ].join(''),
  };
}

const key = (look: NeedleLook, text: string, x: number): string =>
  needle(look, x, 17.6) + textAt([x + 2.4, 18.4], text, { size: 2.2 });

function needle(look: NeedleLook, x: number, y: number): string {
  if (look === 'resting') {
    return element('line', { x1: x - 1, y1: y, x2: x + 1, y2: y, stroke: palette.rule, 'stroke-width': 0.5 });
  }
  const ring = (r: number, fill: string): string =>
    element('circle', { cx: x, cy: y, r, fill, stroke: palette.ink, 'stroke-width': 0.35 });
  if (look === 'empty') return ring(1.3, palette.paper);
  return look === 'loop' ? ring(1.3, palette.ink) : ring(1.7, palette.paper) + ring(0.9, palette.ink);
}
