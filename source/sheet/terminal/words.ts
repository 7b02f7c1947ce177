/** The drawings in sentences, for screen readers and for windows too small for a picture. */
import type { Plan } from '../../planning/plan.ts';
import type { KnittedStripe } from '../../planning/stripe-sequence.ts';
import { count, say } from '../../shared/say.ts';
import { formatLength, metric } from '../../shared/units.ts';
import { bagOf } from '../geometry/bag.ts';
import { bedMapOf, edgesAtRow } from '../geometry/bed-map.ts';
import { foldOf } from '../geometry/fold.ts';
import { formatAngle } from '../measure.ts';
import { plainText } from '../text.ts';
import { markYarns } from '../yarn-marks.ts';
import type { DrawOptions } from './options.ts';

export function describeStrip(plan: Plan, rowsDone: number): readonly string[] {
  const { stripes, rows, brief } = plan;
  const next = stripes.find((stripe) => stripe.lastRow > rowsDone);
  const done = stripes.filter((stripe) => stripe.lastRow <= rowsDone).length;
  return [
    say`The strip leans to the ${brief.crawl} as it grows: ${count(stripes.length, 'stripe')}, ${rows} rows, the last one grafted.`,
    say`${rowsDone} of ${rows} rows are knitted, ${done} of ${count(stripes.length, 'stripe')} whole.`,
    next ? describeStripe(next, rowsDone) : say`The strip is whole.`,
  ];
}

function describeStripe({ number, yarn, firstRow, lastRow }: KnittedStripe, rowsDone: number): string {
  return rowsDone >= firstRow
    ? say`Being knitted: stripe ${number}, ${plainText(yarn)}, rows ${firstRow} to ${lastRow}.`
    : say`Next: stripe ${number}, ${plainText(yarn)}, rows ${firstRow} to ${lastRow}.`;
}

export function describeBag(plan: Plan, { units = metric }: DrawOptions): readonly string[] {
  const { size, eyelets, brief } = plan;
  const up = brief.crawl === 'right' ? 'right' : 'left';
  const yarns = [...markYarns(plan, 'none').keys()].map(plainText).join(', ');
  return [
    say`The finished bag is ${formatLength(size.widthCm, units)} wide and ${formatLength(size.depthCm, units)} deep, ${formatLength(size.depthBelowCordCm, units)} of that below the cord.`,
    say`Its stripes (${yarns}) climb to the ${up} at ${formatAngle(size.stripeAngleDeg)} to the bottom, seen with the knit side out.`,
    say`The cord runs through ${eyelets.used.length} of ${count(eyelets.made, 'eyelet')}; both its ends come out at the graft, on the ${bagOf(plan).ends ? 'front' : 'back'}.`,
    say`The bottom is sewn.`,
  ];
}

export function describeFold(plan: Plan, { units = metric }: DrawOptions): readonly string[] {
  const { startsAtMouth } = foldOf(plan);
  const [start, end] = startsAtMouth ? ['mouth', 'bottom'] : ['bottom', 'mouth'];
  return [
    say`Turn the strip so that its growing edge is up: that edge becomes the mouth, the other the bottom.`,
    say`Fold it every ${formatLength(plan.size.widthCm, units)} along the mouth, half behind half.`,
    say`The last edge, A, comes to lie along the first edge, B. Loop 1 of both is at the ${start}, loop ${plan.stitches} at the ${end}; graft them there.`,
  ];
}

export function describeBed(plan: Plan, { rowsDone = 0 }: DrawOptions): readonly string[] {
  const { hangings, needles } = bedMapOf(plan);
  const now = edgesAtRow(plan, rowsDone);
  const place =
    rowsDone > 0 && rowsDone < plan.rows
      ? [say`At row ${rowsDone} the work hangs from ${now.leftName} to ${now.rightName}.`]
      : [];
  return [
    say`The bed has ${needles} needles; the work crawls to the ${plan.brief.crawl}.`,
    ...place,
    ...hangings.map(
      ({ fromRow, throughRow, hung, last }) =>
        say`Rows ${fromRow} to ${throughRow}: hung from ${hung.leftName} to ${hung.rightName}, crawling to ${last.leftName} to ${last.rightName}.`,
    ),
  ];
}
