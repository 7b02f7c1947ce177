/** The drawings in sentences, for screen readers and for windows too small for a picture. */
import type { Plan } from '../../planning/plan.ts';
import { formatLength, metric } from '../../shared/units.ts';
import { markYarns } from '../colour/shades.ts';
import { bagOf } from '../geometry/bag.ts';
import { bedMapOf, edgesAtRow } from '../geometry/bed-map.ts';
import { foldOf } from '../geometry/fold.ts';
import { counted, formatAngle } from '../measure.ts';
import { plainText } from '../text.ts';
import type { DrawOptions } from './options.ts';

export function describeStrip(plan: Plan, rowsDone: number): readonly string[] {
  const { stripes, rows, brief } = plan;
  const next = stripes.find((stripe) => stripe.lastRow > rowsDone);
  const done = stripes.filter((stripe) => stripe.lastRow <= rowsDone).length;
  return [
    `The strip leans to the ${brief.crawl} as it grows: ${counted(stripes.length, 'stripe')}, ${rows} rows, the last one grafted.`,
    `${rowsDone} of ${rows} rows are knitted, ${done} of ${counted(stripes.length, 'stripe')} whole.`,
    next
      ? `${rowsDone >= next.firstRow ? 'Being knitted' : 'Next'}: stripe ${next.number}, ${plainText(next.yarn)}, rows ${next.firstRow} to ${next.lastRow}.`
      : 'The strip is whole.',
  ];
}

export function describeBag(plan: Plan, { units = metric }: DrawOptions): readonly string[] {
  const { size, eyelets, brief } = plan;
  const up = brief.crawl === 'right' ? 'right' : 'left';
  const yarns = [...markYarns(plan, 'screen').keys()].map(plainText).join(', ');
  return [
    `The finished bag is ${formatLength(size.widthCm, units)} wide and ${formatLength(size.depthCm, units)} deep, ${formatLength(size.depthBelowCordCm, units)} of that below the cord.`,
    `Its stripes (${yarns}) climb to the ${up} at ${formatAngle(size.stripeAngleDeg)} to the bottom, seen with the knit side out.`,
    `The cord runs through ${eyelets.used.length} of ${counted(eyelets.made, 'eyelet')}; both its ends come out at the graft, on the ${bagOf(plan).ends ? 'front' : 'back'}.`,
    'The bottom is sewn.',
  ];
}

export function describeFold(plan: Plan, { units = metric }: DrawOptions): readonly string[] {
  const { startsAtMouth } = foldOf(plan);
  const [start, end] = startsAtMouth ? ['the mouth', 'the bottom'] : ['the bottom', 'the mouth'];
  return [
    'Turn the strip so that its growing edge is up: that edge becomes the mouth, the other the bottom.',
    `Fold it every ${formatLength(plan.size.widthCm, units)} along the mouth, half behind half.`,
    `The last edge, A, comes to lie along the first edge, B. Loop 1 of both is at ${start}, loop ${plan.stitches} at ${end}; graft them there.`,
  ];
}

export function describeBed(plan: Plan, { rowsDone = 0 }: DrawOptions): readonly string[] {
  const { seatings, needles } = bedMapOf(plan);
  const now = edgesAtRow(plan, rowsDone);
  const place =
    rowsDone > 0 && rowsDone < plan.rows
      ? [`At row ${rowsDone} the work hangs from ${now.leftName} to ${now.rightName}.`]
      : [];
  return [
    `The bed has ${needles} needles; the work crawls to the ${plan.brief.crawl}.`,
    ...place,
    ...seatings.map(
      ({ fromRow, throughRow, hung, last }) =>
        `Rows ${fromRow} to ${throughRow}: hung from ${hung.leftName} to ${hung.rightName}, crawling to ${last.leftName} to ${last.rightName}.`,
    ),
  ];
}
