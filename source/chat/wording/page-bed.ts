import { formatNeedle } from '../../bed/needles.ts';
import { edgesAt, type Hanging, shapingsBefore, usableNeedles } from '../../planning/hangings.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { labelled, table } from './page.ts';

/** More hangings than these are counted, not listed: the steps name each. */
const mostListed = 8;

export function bedLines(plan: Plan, words: Words): readonly string[] {
  const { bed, crawl, homeSide } = plan.brief;
  return [
    ...labelled(
      words.say`needles`,
      words.say`${bed.needles} with a pitch of ${bed.pitchMm} mm, ${usableNeedles(plan.brief)} of them within the margins; the work crawls over ${plan.needlesUsed}`,
    ),
    ...labelled(
      words.say`crawl`,
      words.say`to the ${crawl}; the carriage waits on the ${homeSide} between stripes`,
    ),
    ...hangingLines(plan, words),
    ...savingLines(plan, words),
  ];
}

function hangingLines(plan: Plan, words: Words): readonly string[] {
  const { hangings } = plan;
  const [only] = hangings;
  if (only && hangings.length === 1) {
    const { hung, ends } = spansOf(plan, only, words);
    return labelled(words.say`hang`, words.say`on ${hung}; the work ends on ${ends}`);
  }
  const rows = hangings.slice(0, mostListed).map((hanging) => {
    const { hung, ends } = spansOf(plan, hanging, words);
    return [
      words.say`rows ${hanging.fromRow} to ${hanging.throughRow}`,
      words.say`on ${hung}`,
      words.say`ending on ${ends}`,
    ];
  });
  const more = hangings.length - rows.length;
  return [
    ...table(rows).map((line, i) => `  ${(i === 0 ? words.say`hang` : '').padEnd(10)}${line}`),
    ...(more > 0
      ? labelled('', words.say`and ${words.count(more, 'time')} more, each from the same needles`)
      : []),
  ];
}

function savingLines({ savings }: Plan, words: Words): readonly string[] {
  const { saves, saving } = words.plan;
  return savings.flatMap((one, i) => labelled(i === 0 ? saves : '', saving(one)));
}

/** Where the work is hung, and the needles of its last row there. */
function spansOf(
  { brief }: Plan,
  hanging: Hanging,
  words: Words,
): { readonly hung: string; readonly ends: string } {
  const { crawl, shapeEveryRows, bed } = brief;
  const span = (left: number, right: number): string =>
    words.say`${formatNeedle(bed.needles, left)} to ${formatNeedle(bed.needles, right)}`;
  const last = edgesAt(hanging, shapingsBefore(hanging.throughRow, shapeEveryRows), crawl);
  return { hung: span(hanging.hungLeft, hanging.hungRight), ends: span(last.left, last.right) };
}
