/** The drawings in sentences, for screen readers and for windows too small for a picture. */

import type { Plan } from '../../planning/plan.ts';
import type { KnittedStripe } from '../../planning/stripe-sequence.ts';
import type { Words } from '../../wording/words.ts';
import { bagOf } from '../geometry/bag.ts';
import { bedMapOf, edgesAtRow } from '../geometry/bed-map.ts';
import { foldOf } from '../geometry/fold.ts';
import { formatAngle } from '../measure.ts';
import { plainText } from '../text.ts';
import { markYarns } from '../yarn-marks.ts';
import type { DrawOptions } from './options.ts';

export function describeStrip(plan: Plan, rowsDone: number, words: Words): readonly string[] {
  const { stripes, rows, brief } = plan;
  const next = stripes.find((stripe) => stripe.lastRow > rowsDone);
  const done = stripes.filter((stripe) => stripe.lastRow <= rowsDone).length;
  return [
    words.say`The strip leans to the ${brief.crawl} as it grows: ${words.count(stripes.length, 'stripe')}, ${rows} rows, the last one grafted.`,
    words.say`${rowsDone} of ${rows} rows are knitted, ${done} of ${words.count(stripes.length, 'stripe')} whole.`,
    next ? describeStripe(next, rowsDone, words) : words.say`The strip is whole.`,
  ];
}

function describeStripe(
  { number, yarn, firstRow, lastRow }: KnittedStripe,
  rowsDone: number,
  words: Words,
): string {
  return rowsDone >= firstRow
    ? words.say`Being knitted: stripe ${number}, ${plainText(yarn)}, rows ${firstRow} to ${lastRow}.`
    : words.say`Next: stripe ${number}, ${plainText(yarn)}, rows ${firstRow} to ${lastRow}.`;
}

export function describeBag(plan: Plan, words: Words): readonly string[] {
  const { size, eyelets, brief } = plan;
  const up = brief.crawl === 'right' ? 'right' : 'left';
  const yarns = [...markYarns(plan, 'none').keys()].map(plainText).join(', ');
  return [
    words.say`The finished bag is ${words.amounts.length(size.widthCm)} wide and ${words.amounts.length(size.depthCm)} deep, ${words.amounts.length(size.depthBelowCordCm)} of that below the cord.`,
    words.say`Its stripes (${yarns}) climb to the ${up} at ${formatAngle(size.stripeAngleDeg)} to the bottom, seen with the knit side out.`,
    words.say`The cord runs through ${eyelets.used.length} of ${words.count(eyelets.made, 'eyelet')}; both its ends come out at the graft, on the ${bagOf(plan).ends ? 'front' : 'back'}.`,
    words.say`The bottom is sewn.`,
  ];
}

export function describeFold(plan: Plan, words: Words): readonly string[] {
  const { startsAtMouth } = foldOf(plan);
  const [start, end] = startsAtMouth ? ['mouth', 'bottom'] : ['bottom', 'mouth'];
  return [
    words.say`Turn the strip so that its growing edge is up: that edge becomes the mouth, the other the bottom.`,
    words.say`Fold it every ${words.amounts.length(plan.size.widthCm)} along the mouth, half behind half.`,
    words.say`The last edge, A, comes to lie along the first edge, B. Loop 1 of both is at the ${start}, loop ${plan.stitches} at the ${end}; graft them there.`,
  ];
}

export function describeBed(plan: Plan, { rowsDone = 0 }: DrawOptions, words: Words): readonly string[] {
  const { hangings, needles } = bedMapOf(plan);
  const now = edgesAtRow(plan, rowsDone);
  const place =
    rowsDone > 0 && rowsDone < plan.rows
      ? [words.say`At row ${rowsDone} the work hangs from ${now.leftName} to ${now.rightName}.`]
      : [];
  return [
    words.say`The bed has ${needles} needles; the work crawls to the ${plan.brief.crawl}.`,
    ...place,
    ...hangings.map(
      ({ fromRow, throughRow, hung, last }) =>
        words.say`Rows ${fromRow} to ${throughRow}: hung from ${hung.leftName} to ${hung.rightName}, crawling to ${last.leftName} to ${last.rightName}.`,
    ),
  ];
}
