import { describe, expect, it } from 'vitest';
import { jobOf } from '../../../test/fixtures/plan-of.ts';
import { stripedBrief } from '../../../test/fixtures/striped-brief.ts';
import type { Bed } from '../../bed/bed.ts';
import { diagnose } from '../../session/diagnose/diagnose.ts';
import { slips } from '../../session/diagnose/slip.ts';
import type { Place } from '../../session/locate/locate.ts';
import { looksAt } from '../../session/locate/looks-of.ts';
import { facts } from '../../session/locate/seen.ts';
import { replanChoices } from '../../session/replan/replan-choices.ts';
import { bedAtPlace } from '../../session/rip-back/bed-at-place.ts';
import { ripBack } from '../../session/rip-back/rip-back.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import { doneBeforeMove } from '../../steps/landmarks.ts';
import { englishWords } from '../../wording/words.ts';
import {
  formatDiagnosis,
  formatIrreversible,
  formatLook,
  formatMend,
  formatQuestion,
  formatRipBack,
  formatRipBackFault,
  formatRipStep,
  formatSeenFault,
} from './finding.ts';
import { formatReplanChoices, formatReplanFault } from './finding-replan.ts';

/** Thirty-six stitches on a bed of 150, crawling left: cast on from R38 to R73, so move 3 takes R35 … R70 on. */
const job: Job = jobOf(stripedBrief(36, 64));
const afterMove3 = doneBeforeMove(job, 3) + 2;
const blame = /\byou (forgot|made|missed|did)|wrong(ly)? by you|your (mistake|fault)|error/i;

const place = (done: number): Place => ({ done, through: done, looks: looksAt(job, done) });

describe('finding the place', () => {
  it('says where it is in one line', () => {
    expect(formatLook(place(afterMove3), englishWords)).toBe(
      `step ${afterMove3 + 1} comes next, 6 rows knitted, edges R35 and R70, carriage on the right, plum in the feeder`,
    );
  });

  it('has a question for every fact and a sentence for every fault', () => {
    for (const fact of facts) expect(formatQuestion(fact, englishWords)).toMatch(/\?$/);
    expect(
      formatSeenFault({ code: 'seen/needle-off-bed', needle: 'R99', needleCount: 150 }, englishWords),
    ).toMatch(/R99.*150/);
    expect(
      formatSeenFault({ code: 'seen/unknown-yarn', yarn: 'gold', known: ['plum', 'mint'] }, englishWords),
    ).toMatch(/plum and mint/);
    expect(formatSeenFault({ code: 'seen/not-a-count', fact: 'stitches', value: -1 }, englishWords)).toMatch(
      /^-1/,
    );
  });
});

describe('a slip', () => {
  it('is told as what is on the bed, with needles in every step of the mend', () => {
    const { right, stitches, ...looks } = looksAt(job, afterMove3);
    const found = diagnose(job, { ...looks, right: 'R71', stitches: stitches + 1 }, afterMove3);
    const [first] = found.ok ? found.value : [];
    if (!first) throw new Error('nothing found');
    expect(right).toBe('R70');
    expect(formatDiagnosis(first, englishWords)).toBe(
      'The decrease of move 3, after row 6, is not on the bed: the trailing edge is one needle too far out.',
    );
    expect(first.mends.flatMap((mend) => formatMend(mend, englishWords))).toEqual([
      'It can be set right now, without a trace:',
      'With the tool, lift the loops of R71 and R70 and set them on R70 and R69. Push R71 out of work.',
    ]);
  });

  it('has a sentence of its own for each, and blames nobody', () => {
    const sentences = slips.map((slip) =>
      formatDiagnosis(
        {
          slip,
          place: place(afterMove3),
          number: 3,
          row: 6,
          rowsSince: 2,
          needle: 'R71',
          yarn: 'plum',
          usedYarn: 'mint',
          mends: [],
        },
        englishWords,
      ),
    );
    expect(new Set(sentences).size).toBe(slips.length);
    for (const sentence of sentences) {
      expect(sentence).toMatch(/\.$/);
      expect(sentence).not.toMatch(blame);
    }
  });
});

describe('the way back', () => {
  const back = ripBack(job, afterMove3 + 2, afterMove3 - 2);

  it('is told a step a line, needles and counter in it', () => {
    if (!back.ok) throw new Error(back.fault.code);
    expect(formatRipBack(back.value, englishWords)).toBe('4 steps back, to 6 rows on the counter.');
    expect(back.value.steps.map((one) => formatRipStep(one, englishWords))).toEqual([
      'Pull out the row of mint gently, catching every loop: one loop on each needle from R35 to R70, none on R37, which stays in work and 2 together on R69. Bring the carriage back to the right without knitting. Turn the row counter back to 6.',
      'Take mint out of the feeder, back to its place at the right end. Put plum back into the feeder.',
      'Bring R71 back into work. Set the loops of R70 and R69 out again on R71 and R70, parting the stitches that share R69.',
      'Set the loops of R35 and R36 back on R36 and R37. Push R35 back out of work.',
    ]);
  });

  it('says what cannot be taken back, and what to do instead', () => {
    const whole = ripBack(job, job.stepCount, 0);
    if (!whole.ok) throw new Error(whole.fault.code);
    const marked = whole.value.irreversible;
    expect(formatRipBack(whole.value, englishWords)).toContain(`${marked.length} of them cannot be undone`);
    for (const step of marked) {
      const sentence = step.irreversible ? formatIrreversible(step.irreversible, englishWords) : '';
      expect(formatRipStep(step, englishWords)).toContain(sentence);
      expect(sentence).toMatch(/: .+\.$/);
    }
    for (const step of whole.value.steps)
      expect(formatRipStep(step, englishWords)).not.toMatch(/undefined|null|\[object/);
    expect(formatRipBackFault({ code: 'rip-back/not-behind', fromDone: 3, toDone: 5 }, englishWords)).toMatch(
      /before step 4/,
    );
    expect(
      formatRipBackFault({ code: 'rip-back/no-such-place', done: 999, stepCount: 500 }, englishWords),
    ).toMatch(/500/);
  });

  it('names needles that hold what it says', () => {
    const bed: Bed = bedAtPlace(job, afterMove3);
    expect(bed.needles.findIndex((needle) => needle.loopCount === 2)).toBe(75 + 69 - 1);
    expect(stepAt(job, afterMove3).act).toMatchObject({ emptied: 'R71', doubled: 'R69' });
  });
});

describe('planning on from here', () => {
  it('tells the size of each choice and the nearest', () => {
    const done = (job.phaseStarts[1] ?? 0) + 40;
    const choices = replanChoices(job, done, {
      measured: { stitchMm: 4.8, rowMm: 3.2 },
      weighed: new Map([['mint', 1]]),
      recolour: null,
    });
    if (!choices.ok) throw new Error(choices.fault.code);
    const lines = formatReplanChoices(choices.value, englishWords);
    expect(lines[0]).toMatch(/^As planned, 64 rows: 12.7 cm wide, .* but mint is \d+ g short\.$/);
    expect(lines.at(-2)).toMatch(/^The weighed yarn lasts for none/);
    const enough = replanChoices(job, done, { measured: null, weighed: new Map(), recolour: null });
    if (!enough.ok) throw new Error(enough.fault.code);
    expect(formatReplanChoices(enough.value, englishWords).at(-2)).toMatch(
      /^Nearest to 13.7 cm wide with the yarn there is: 64 rows, number \d\.$/,
    );
    expect(formatReplanChoices(enough.value, englishWords).join(' ')).toMatch(
      /60 rows, 1 repeat fewer.*68 rows, 1 repeat more/,
    );
  });

  it('says why a change cannot be, and what can', () => {
    const sentences = [
      formatReplanFault(
        { code: 'replan/rows-not-whole-repeats', rows: 66, stepRows: 4, least: 12 },
        englishWords,
      ),
      formatReplanFault({ code: 'replan/rows-too-few', rows: 8, least: 12 }, englishWords),
      formatReplanFault({ code: 'replan/rows-too-many', rows: 40_000, most: 20_000 }, englishWords),
      formatReplanFault({ code: 'replan/unknown-yarn', yarn: 'gold', known: ['plum', 'mint'] }, englishWords),
      formatReplanFault({ code: 'replan/yarn-not-to-come', yarn: 'sand' }, englishWords),
      formatReplanFault({ code: 'replan/colours-meet', first: 31, second: 1, yarn: 'plum' }, englishWords),
      formatReplanFault({ code: 'replan/measure-impossible', sizeMm: 0 }, englishWords),
      formatReplanFault({ code: 'replan/too-late' }, englishWords),
    ];
    expect(new Set(sentences).size).toBe(sentences.length);
    for (const sentence of sentences) expect(sentence).toMatch(/: .+\.$/);
  });
});
