/** The drawings in sentences, for screen readers and for windows too small for a picture. */

import type { Plan } from '../../planning/plan.ts';
import type { KnittedStripe } from '../../planning/stripe-sequence.ts';
import type { Words } from '../../wording/words.ts';
import { bagOf } from '../geometry/bag.ts';
import { bedMapOf, edgesAtRow } from '../geometry/bed-map.ts';
import { foldOf } from '../geometry/fold.ts';
import { formatAngle, plainText } from '../text.ts';
import { yarnSigns } from '../yarn-signs.ts';
import type { DrawOptions } from './picture.ts';

export function describeStrip(plan: Plan, rowsDone: number, words: Words): readonly string[] {
  const { stripes, rows, brief } = plan;
  const next = stripes.find((stripe) => stripe.lastRow > rowsDone);
  const done = stripes.filter((stripe) => stripe.lastRow <= rowsDone).length;
  return [
    words.pictures.leaningStrip(brief.crawl, stripes.length, rows),
    words.pictures.rowsKnitted(rowsDone, rows, done, stripes.length),
    next ? describeStripe(next, rowsDone, words) : words.pictures.stripWhole,
  ];
}

function describeStripe(
  { number, yarn, firstRow, lastRow }: KnittedStripe,
  rowsDone: number,
  words: Words,
): string {
  return rowsDone >= firstRow
    ? words.pictures.stripeNow(number, plainText(yarn), firstRow, lastRow)
    : words.pictures.stripeNext(number, plainText(yarn), firstRow, lastRow);
}

export function describeBag(plan: Plan, words: Words): readonly string[] {
  const { size, eyelets, brief, boxed, hem } = plan;
  const up = brief.crawl === 'right' ? 'right' : 'left';
  const yarns = [...yarnSigns(plan, 'none').keys()].map(plainText).join(', ');
  return [
    words.pictures.finishedBag(size.widthCm, size.depthCm, size.depthBelowCordCm),
    words.pictures.climbingStripes(yarns, up, formatAngle(size.stripeAngleDeg)),
    (brief.cord.draws === 2 ? words.pictures.cordsWay : words.pictures.cordWay)(
      eyelets.used.length,
      eyelets.made,
      bagOf(plan).ends ? 'front' : 'back',
    ),
    ...(hem ? [words.pictures.mouthHemmed(hem.heightCm)] : []),
    boxed
      ? words.pictures.bottomBoxed(boxed.baseWidthCm, boxed.baseDepthCm, boxed.sideCm)
      : words.pictures.bottomSewn,
  ];
}

export function describeFold(plan: Plan, words: Words): readonly string[] {
  const { startsAtMouth } = foldOf(plan);
  const [start, end] = startsAtMouth ? ['mouth', 'bottom'] : ['bottom', 'mouth'];
  return [
    words.pictures.turnStrip,
    words.pictures.foldStrip(plan.size.widthCm),
    words.pictures.joinEdges(start, plan.stitches, end),
  ];
}

export function describeBed(plan: Plan, { rowsDone = 0 }: DrawOptions, words: Words): readonly string[] {
  const { hangings, needles } = bedMapOf(plan);
  const now = edgesAtRow(plan, rowsDone);
  const place =
    rowsDone > 0 && rowsDone < plan.rows
      ? [words.pictures.workNow(rowsDone, now.leftName, now.rightName)]
      : [];
  return [
    words.pictures.bedAndCrawl(needles, plan.brief.crawl),
    ...place,
    ...hangings.map(({ fromRow, throughRow, hung, last }) =>
      words.pictures.hangingCaption(
        fromRow,
        throughRow,
        hung.leftName,
        hung.rightName,
        last.leftName,
        last.rightName,
      ),
    ),
  ];
}
