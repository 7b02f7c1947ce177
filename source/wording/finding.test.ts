import { describe, expect, it } from 'vitest';
import { jobOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { slipsOfAllKinds } from '../../test/fixtures/slips-of-all-kinds.ts';
import { valueIn } from '../../test/tools/result.ts';
import type { Bed } from '../bed/bed.ts';
import { diagnose } from '../session/diagnose/diagnose.ts';
import type { Place } from '../session/locate/locate.ts';
import { looksAt } from '../session/locate/looks-of.ts';
import { facts } from '../session/locate/seen.ts';
import { replanChoices } from '../session/replan/replan-choices.ts';
import { bedAtPlace } from '../session/rip-back/bed-at-place.ts';
import { ripBack } from '../session/rip-back/rip-back.ts';
import { startSession } from '../session/session.ts';
import { type Job, stepAt } from '../steps/job.ts';
import { doneBeforeShaping } from '../steps/landmarks.ts';
import { sayBy } from './by-kind.ts';
import { formatFault } from './faults.ts';
import { formatHandStep, formatIrreversible, formatLook, formatRipBack, seenFaults } from './finding.ts';
import { sayStories, sayWholeMend } from './finding-answer.ts';
import { formatReplanChoices } from './replan.ts';
import { englishWords } from './words.ts';

/** Thirty-six stitches on a bed of 150, crawling left: cast on from R38 to R73, so move 3 takes R35 … R70 on. */
const job: Job = jobOf(stripedBrief(36, 64));
const afterMove3 = doneBeforeShaping(job, 3) + 2;
const blame = /\byou (forgot|made|missed|did)|wrong(ly)? by you|your (mistake|fault)|error/i;

const place = (done: number): Place => ({ done, through: done, looks: looksAt(job, done) });

describe('finding the place', () => {
  it('says where it is in one line', () => {
    expect(formatLook(place(afterMove3), englishWords)).toBe(
      `step ${afterMove3 + 1} comes next, 6 rows knitted, edges R35 and R70, carriage on the right, plum in the feeder`,
    );
  });

  it('has a question for every fact and a sentence for every fault', () => {
    for (const fact of facts) expect(englishWords.finding.asks[fact]).toMatch(/\?$/);
    expect(
      sayBy(
        'code',
        seenFaults,
        { code: 'seen/needle-off-bed', needle: 'R99', needleCount: 150 },
        englishWords,
      ),
    ).toMatch(/R99.*150/);
    expect(
      sayBy(
        'code',
        seenFaults,
        { code: 'seen/unknown-yarn', yarn: 'gold', known: ['plum', 'mint'] },
        englishWords,
      ),
    ).toMatch(/plum and mint/);
    expect(
      sayBy('code', seenFaults, { code: 'seen/not-a-count', fact: 'stitches', value: -1 }, englishWords),
    ).toMatch(/^-1/);
  });
});

describe('a slip', () => {
  const { slips } = englishWords;

  it('is told as what is on the bed, with needles in every step of the mend', () => {
    const { right, stitches, ...looks } = looksAt(job, afterMove3);
    const look = { ...looks, right: 'R71', stitches: stitches + 1 };
    const found = valueIn(
      diagnose(job, { look, moments: [{ by: 'move', number: 3 }], unsure: [] }, afterMove3),
    );
    expect(right).toBe('R70');
    expect(sayStories(job, found.stories, true, englishWords)[0]).toBe(
      'The decrease of move 3, after row 6, is missing: the trailing edge is one needle too far out.',
    );
    expect(found.remedies.map(({ mend }) => sayWholeMend(mend, englishWords))).toEqual([
      'This can be repaired now and leaves no trace: With the tool, lift the loops of R71 and R70 and set them on R70 and R69. Push R71 out of work.',
    ]);
  });

  it('has a sentence of its own for each, and blames nobody', () => {
    const sentences = slipsOfAllKinds.map((told) => slips.slip(told));
    expect(new Set(sentences).size).toBe(slipsOfAllKinds.length);
    for (const sentence of sentences) {
      expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
      expect(sentence).not.toMatch(blame);
      expect(sentence).not.toMatch(/undefined|null|\[object/);
    }
  });

  it('tells the loops of fallen work one by one: 35 on 34 needles', () => {
    const told = slipsOfAllKinds.find(({ slip }) => slip.is === 'work-dropped');
    expect(told && slips.slip(told)).toContain(
      'The 35 open loops are of row 6, from R35 to R69, R37 empty for the eyelet, two on R69',
    );
  });
});

describe('the way back', () => {
  const back = ripBack({ ...startSession(job), done: afterMove3 + 2 }, afterMove3 - 2);

  it('is told a step a line, needles and counter in it', () => {
    if (!back.ok) throw new Error(back.fault.code);
    expect(formatRipBack(back.value, englishWords)).toBe('6 steps back, to 6 rows on the counter.');
    expect(back.value.steps.map((step) => formatHandStep(step, englishWords))).toEqual([
      'Take the comb off, a hand under it: nothing may pull at loops that come free.',
      'Pull out the row of mint gently, catching every loop: one loop on each needle from R35 to R70, none on R37, which stays in work and 2 together on R69. Take the yarn out of the feeder, slip the carriage back to the right, set it to knit and put the yarn back in. Set the row counter to 6.',
      'Take mint out of the feeder, back into its clip on the right. Put plum back into the feeder.',
      'Bring R71 back into work. Set the loops of R70 and R69 out again on R71 and R70, parting the stitches that share R69.',
      'Set the loops of R35 and R36 back on R36 and R37. Push R35 back out of work.',
      'Hang the comb again.',
    ]);
  });

  it('says what cannot be taken back, and what to do instead', () => {
    const whole = valueIn(ripBack({ ...startSession(job), done: job.stepCount }, 0));
    const marked = whole.irreversible;
    expect(formatRipBack(whole, englishWords)).toContain(`${marked.length} of them cannot simply be undone`);
    for (const step of marked) {
      const sentence = step.irreversible ? formatIrreversible(step.irreversible, englishWords) : '';
      // What stays out is said once, of the move itself.
      const told = step.irreversible?.why === 'released' ? 'before anything else' : sentence;
      expect(formatHandStep(step, englishWords).split(told)).toHaveLength(2);
      expect(sentence).toMatch(/: .+\.$/);
    }
    for (const step of whole.steps)
      expect(formatHandStep(step, englishWords)).not.toMatch(/undefined|null|\[object/);
    expect(formatFault({ code: 'rip-back/not-behind', fromDone: 3, toDone: 5 }, englishWords)).toMatch(
      /before step 4/,
    );
    expect(formatFault({ code: 'rip-back/no-such-place', done: 999, stepCount: 500 }, englishWords)).toMatch(
      /500/,
    );
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
    const choices = valueIn(
      replanChoices(job, done, {
        measured: { stitchMm: 4.8, rowMm: 3.2 },
        weighed: new Map([['mint', 1]]),
        recolour: null,
        cordYarn: null,
      }),
    );
    const lines = formatReplanChoices(choices, englishWords);
    expect(lines[0]).toMatch(
      /^As planned, 64 rows: 12.7 cm wide, .* but mint is 10 g short of 10 g for stripes and 1 g for .*\.$/,
    );
    expect(lines.at(-2)).toMatch(/^The weighed yarn lasts for no bag of that kind/);
    const enough = valueIn(
      replanChoices(job, done, {
        measured: null,
        weighed: new Map(),
        recolour: null,
        cordYarn: null,
      }),
    );
    expect(formatReplanChoices(enough, englishWords).at(-2)).toMatch(
      /^Closest to 13.7 cm wide with the yarn you have: 64 rows, number \d\.$/,
    );
    expect(formatReplanChoices(enough, englishWords).join(' ')).toMatch(
      /60 rows, 1 repeat fewer.*68 rows, 1 repeat more/,
    );
  });

  it('says why a change cannot be, and what can', () => {
    const sentences = [
      formatFault(
        { code: 'replan/rows-not-whole-repeats', rows: 66, rowMultiple: 4, least: 12 },
        englishWords,
      ),
      formatFault({ code: 'replan/rows-too-few', rows: 8, least: 12 }, englishWords),
      formatFault({ code: 'replan/rows-too-many', rows: 40_000, most: 20_000 }, englishWords),
      formatFault({ code: 'replan/unknown-yarn', yarn: 'gold', known: ['plum', 'mint'] }, englishWords),
      formatFault({ code: 'replan/yarn-not-to-come', yarn: 'sand' }, englishWords),
      formatFault({ code: 'replan/colours-meet', first: 31, second: 1, yarn: 'plum' }, englishWords),
      formatFault({ code: 'replan/measure-impossible', sizeMm: 0 }, englishWords),
      formatFault({ code: 'replan/too-late' }, englishWords),
    ];
    expect(new Set(sentences).size).toBe(sentences.length);
    for (const sentence of sentences) expect(sentence).toMatch(/: .+\.$/);
  });
});
