/** What is seen at the bench, asked for and answered in German. The bag is invented; German by common practice, no source. */

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openMemoryBench } from '../../test/fixtures/bench-in-memory.ts';
import { jobOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { slipsOfAllKinds } from '../../test/fixtures/slips-of-all-kinds.ts';
import { englishWord, german, speak, spoken } from '../../test/fixtures/spoken.ts';
import { valueIn } from '../../test/tools/result.ts';
import { facts } from '../session/locate/seen.ts';
import { ripBack } from '../session/rip-back/rip-back.ts';
import { startSession } from '../session/session.ts';
import { formatHandStep } from '../wording/finding.ts';
import { parseFind } from './grammar/parse-seen.ts';

/** 46 stitches from R28 to R73, so that move 12, after row 24, takes R17 … R62 to R16 … R61. */
const brief = stripedBrief(46, 64);
const job = jobOf(brief);

beforeEach(() => speak(german));
afterEach(() => speak(null));

/** What is answered to these lines, one after the other, in a new session. */
function type(...lines: readonly string[]): string {
  const { store, submit } = openMemoryBench({ brief });
  for (const line of lines) submit(line);
  const answers = store.get().lines.filter(({ tone }) => tone !== 'typed');
  return answers.map(({ text }) => text).join('\n');
}

describe('what is seen, in German', () => {
  it.each([
    ['R17 R62 mint Schlitten rechts Reihe 24', 'R17 R62 mint carriage right row 24'],
    ['linker Rand R17, rechter Rand R62', 'left edge R17, right edge R62'],
    ['und FADENFÜHRER leer', 'and feeder empty'],
    ['46 Maschen, 8 Hilfsgarnreihen, 3 Streifen', '46 stitches, 8 waste rows, 3 stripes'],
    ['Zählwerk 24 Schlitten l fest', 'counter 24 carriage l firm'],
    ['unsicher', 'unsure'],
    ['carriage right, Reihe 24', 'carriage right, row 24'],
  ])('%s', (own, english) => {
    expect(parseFind(own, spoken())).toEqual(parseFind(english, spoken()));
    expect(parseFind(own, spoken()).ok).toBe(true);
  });

  it('names a place, and goes there', () => {
    const answers = type('find R17 R62 mint Schlitten rechts Reihe 24', 'choose');
    expect(answers).toContain(
      'Deine Arbeit ist hier: als Nächstes kommt Schritt 70, 24 Reihen gestrickt, Ränder R17 und R62, Schlitten rechts, mint im Fadenführer.',
    );
    expect(answers).toContain('Weiter bei: als Nächstes Schritt 70 von');
  });

  it.each([
    ['several places', ['find R17 R62', 'find und Schlitten rechts', 'find unsicher']],
    ['one reading amiss', ['go step 75', 'find R17 R62 mint Schlitten rechts Reihe 50']],
    [
      'a slip, mended',
      [
        'go step 74',
        'find R16 R62 47 Maschen Reihe 25',
        'find und fest',
        'find und Formschritt 12',
        'choose 2',
        '',
        '',
      ],
    ],
    ['another length', ['go step 75', 'replan 20 Maschen 9,8 cm 30 Reihen 10,5 cm', 'choose 1', 'back']],
    ['the way back', ['go step 75', 'rip Reihe 25', 'choose', '', 'back', 'stop']],
  ])('%s: answers without English', (_, lines) => {
    const answers = type(...lines);
    expect(answers.split('\n').length).toBeGreaterThan(3);
    expect(answers.replace(/go step \d+/g, '')).not.toMatch(englishWord);
  });
});

describe('every sentence of finding, in German', () => {
  it('asks each question', () => {
    for (const fact of facts) expect(spoken().finding.asks[fact]).toMatch(/^[^?]+\?$/);
    expect(facts.map((fact) => spoken().finding.asks[fact]).join(' ')).not.toMatch(englishWord);
  });

  it('tells every slip, what will show, and every question', () => {
    const { slips } = spoken();
    const sentences = slipsOfAllKinds.map((told) => slips.slip(told));
    expect(new Set(sentences).size).toBe(slipsOfAllKinds.length);
    const asked = [
      'loose',
      'rehung',
      'before-move',
      'which-edge',
      'stray',
      'move',
      'stripe',
      'row',
      'move-or-rehang',
    ] as const;
    const questions = asked.flatMap((one) =>
      (['only', 'first', 'other'] as const).map((which) => slips.question(one, which)),
    );
    expect(
      [...sentences, ...questions, slips.yarnWhere('plum')].join(' ').replace(/\bfind\b/g, ''),
    ).not.toMatch(englishWord);
    expect(slips.shows(['extra-eyelet', 'wide-hole'])).not.toMatch(englishWord);
  });

  it('tells each step of the way back through the whole bag', () => {
    const back = valueIn(ripBack({ ...startSession(job), done: job.stepCount }, 0));
    for (const step of back.steps) expect(formatHandStep(step, spoken())).not.toMatch(englishWord);
  });
});
