import { formatNeedle } from '../bed/needles.ts';
import { edgesOfRow, type Hanging, usableNeedles } from '../planning/hangings.ts';
import type { Plan } from '../planning/plan.ts';
import { labelled, table } from './page.ts';
import type { Words } from './words.ts';

/** More hangings than these are counted, not listed: the steps name each. */
const mostListed = 8;

export function bedLines(plan: Plan, words: Words): readonly string[] {
  const { bed, crawl, homeSide } = plan.brief;
  return [
    ...labelled(
      words.page.needles,
      words.page.bed(bed.needles, bed.pitchMm, usableNeedles(plan.brief), plan.needlesUsed),
    ),
    ...labelled(words.page.crawl, words.page.crawlTo(crawl, homeSide)),
    ...hangingLines(plan, words),
    ...savingLines(plan, words),
  ];
}

function hangingLines(plan: Plan, words: Words): readonly string[] {
  const { hangings } = plan;
  const [only] = hangings;
  if (only && hangings.length === 1) {
    const { hung, ends } = spansOf(plan, only, words);
    return labelled(words.page.hang, words.page.hungOnce(hung, ends));
  }
  const rows = hangings.slice(0, mostListed).map((hanging) => {
    const { hung, ends } = spansOf(plan, hanging, words);
    return [
      words.page.rows(hanging.fromRow, hanging.throughRow),
      words.page.hungOn(hung),
      words.page.endingOn(ends),
    ];
  });
  const more = hangings.length - rows.length;
  return [
    ...table(rows).map((line, i) => `  ${(i === 0 ? words.page.hang : '').padEnd(10)}${line}`),
    ...(more > 0 ? labelled('', words.page.moreHangings(more)) : []),
  ];
}

function savingLines({ savings }: Plan, words: Words): readonly string[] {
  const { saves, saving } = words.plan;
  return savings.flatMap((one, i) => labelled(i === 0 ? saves : '', saving(one)));
}

/** Where the work is hung, and the needles of its last row there. */
function spansOf(
  plan: Plan,
  hanging: Hanging,
  words: Words,
): { readonly hung: string; readonly ends: string } {
  const { bed } = plan.brief;
  const span = (left: number, right: number): string =>
    words.page.fromTo(formatNeedle(bed.needles, left), formatNeedle(bed.needles, right));
  const last = edgesOfRow(plan, hanging.throughRow);
  return { hung: span(hanging.hungLeft, hanging.hungRight), ends: span(last.left, last.right) };
}
