/** The questions as a whole: going on, back, to an answer; the plan; and that no line throws or loses an answer. */

import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { plumAndMint } from '../../../test/fixtures/plan-of.ts';
import { german, speak, spoken } from '../../../test/fixtures/spoken.ts';
import { tries } from '../../../test/tools/tries.ts';
import { readBrief } from '../../planning/parse-brief.ts';
import { planBag } from '../../planning/plan-bag.ts';
import { imperial, unitsFor } from '../../shared/units.ts';
import { questionIds, unasked } from './answers.ts';
import { briefFileOf } from './brief-of.ts';
import { formatInterviewFault } from './faults.ts';
import { beginInterview, type Interview, type InterviewUpdate, updateInterview } from './interview.ts';
import { draftOf, readDraft, readDraftGuide, valuesOf } from './questions.ts';
import { interviewView, questionLines } from './view.ts';

afterEach(() => speak(null));

const start = beginInterview({}, spoken());

const typing = (interview: Interview, ...lines: readonly string[]): InterviewUpdate =>
  lines.reduce<InterviewUpdate>((at, line) => updateInterview(at.interview, line), {
    interview,
    lines: [],
    effect: null,
  });

const diceAnswers = [
  'Dice bag',
  '14 by 18 cm',
  '150 needles 6.5 mm',
  '40 stitches 19.2 cm, 60 rows 21.6 cm',
  'plum #6b2d5c 190 m per 100 g 60 g',
  'mint #9fd8c2 190 m per 100 g 45 g',
  '2',
  '2',
];
const planned = typing(start, ...diceAnswers);
const texts = ({ lines }: InterviewUpdate): string => lines.map(({ text }) => text).join('\n');

describe('the questions', () => {
  it('are eight, each asked once, and then comes the plan', () => {
    const places = diceAnswers.map((_, i) => typing(start, ...diceAnswers.slice(0, i)).interview.at);
    expect(places).toEqual(questionIds.filter((id) => !unasked.has(id)));
    expect(planned.interview.at).toBe('plan');
  });

  it('make the brief that was told', () => {
    const made = briefFileOf(valuesOf(planned.interview.answers, spoken()));
    expect(made.ok && made.value.json).toEqual({
      name: 'Dice bag',
      bed: { needles: 150, pitchMm: 6.5, marginNeedles: 2 },
      swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, state: 'wet-relaxed' },
      bag: { widthCm: 14, depthCm: 18 },
      ...plumAndMint,
      crawl: 'left',
      edgeStitches: 2,
      shapeEveryRows: 2,
      waste: { yarn: 'waste', rows: 8, ravel: 'loop' },
      cord: { stitches: 3, yarn: 'plum', tieCm: 25 },
    });
  });

  it('show the plan when all is answered: size, stitches, yarn', () => {
    expect(texts(planned)).toContain(
      'Dice bag: 13.7 cm wide and 18.1 cm deep, sewn and lying flat. Asked: 14 cm wide',
    );
    expect(texts(planned)).toContain('46 stitches, 64 rows round and 31 shaping moves.');
    expect(texts(planned)).toMatch(
      /plum \d+ g, enough \(you have 60 g\) and mint \d+ g, enough \(you have 45 g\)/,
    );
    expect(texts(planned)).not.toContain('rule of thumb');
  });

  it('say what is a guess where Enter took it', () => {
    const guessed = typing(start, '', '', '', '', '', '', '', '');
    expect(guessed.interview.at).toBe('plan');
    expect(texts(guessed)).toContain('The swatch is a guess');
    expect(texts(guessed)).toContain('a rule of thumb');
  });

  it.each([
    [
      'a guess',
      ['change swatch none'],
      'Look once more: the swatch is a guess. Enter again begins all the same.',
    ],
    ['short of yarn', ['change second mint 190 m 5 g'], 'Look once more: mint is '],
    ['too tight', ['change first plum 60 m', 'change second mint 60 m'], 'the carriage may jam'],
  ])('ask once more before a bag that is %s', (_, changes, told) => {
    const once = typing(planned.interview, ...changes, '');
    expect([once.effect, texts(once)]).toEqual([null, expect.stringContaining(told)]);
    expect(interviewView(once.interview).enter).toContain('all the same');
    expect(typing(once.interview, '').effect).toEqual({ kind: 'begin', out: null });
  });

  it('leave the stripes out where there is one yarn', () => {
    const one = typing(start, ...diceAnswers.slice(0, 5), 'none', '');
    expect(one.interview.at).toBe('plan');
    const made = briefFileOf(valuesOf(one.interview.answers, spoken()));
    expect(made.ok && made.value.brief.stripes).toEqual([{ yarn: 'plum', rows: 2 }]);
  });

  it("begin at Enter, at yes, and with a file of the maker's own", () => {
    expect(typing(planned.interview, '').effect).toEqual({ kind: 'begin', out: null });
    expect(typing(planned.interview, 'yes').effect).toEqual({ kind: 'begin', out: null });
    expect(typing(planned.interview, 'save my bag.json').effect).toEqual({
      kind: 'begin',
      out: 'my bag.json',
    });
  });

  it('do not begin a bag that the bed is too short for, and say so', () => {
    const deep = typing(planned.interview, 'size 14 by 200');
    expect(texts(deep)).toContain('146 needles within its margins');
    const refused = typing(deep.interview, '');
    expect(refused.effect).toBe(null);
    expect(refused.lines.at(-1)).toMatchObject({ tone: 'fault' });
    expect(typing(refused.interview, 'change size 14 by 18', '').effect).toMatchObject({ kind: 'begin' });
  });
});

describe('a word that steers', () => {
  const fourth = typing(start, ...diceAnswers.slice(0, 3)).interview;

  it('goes one question back, and Enter then keeps what was answered', () => {
    const back = typing(fourth, 'back');
    expect(back.interview.at).toBe('bed');
    expect(interviewView(back.interview).enter).toBe('keeps 150 needles, 6.5 mm apart');
    expect(typing(back.interview, '').interview).toEqual(fourth);
    expect(typing(planned.interview, 'back', 'back', 'back').interview.at).toBe('second');
  });

  it.each([
    ['change size', 'size'],
    ['change 2', 'size'],
    ['change first yarn', 'first'],
    ['change yarn', 'first'],
    ['change needles', 'bed'],
  ])('%s goes there and comes back', (line, id) => {
    const there = typing(planned.interview, line);
    expect(there.interview.at).toBe(id);
    expect(typing(there.interview, '').interview.at).toBe('plan');
  });

  it('changes an answer in one line, at any question', () => {
    const changed = typing(fourth, 'change bed bulky 90');
    expect(changed.interview.at).toBe('swatch');
    expect(changed.interview.answers.bed).toEqual({ line: 'bulky 90', length: 'cm' });
    expect(typing(fourth, 'change second mint 20 g').interview).toMatchObject({
      at: 'swatch',
      answers: { second: { line: 'mint 20 g' } },
    });
  });

  it.each([
    [start, 'back', { code: 'first-run/nothing-before' }, 'This is the first question.'],
    [
      fourth,
      'change everything',
      { code: 'first-run/no-such-answer', word: 'everything' },
      'choose name, size, bed,',
    ],
    [fourth, 'change 9', { code: 'first-run/no-such-answer', word: '9' }, 'or its number'],
    [fourth, 'units miles', { code: 'first-run/not-units', word: 'miles' }, 'Type units cm, or units in.'],
    [planned.interview, 'go on', { code: 'first-run/not-a-choice', word: 'go on' }, 'press Enter to begin'],
  ] as const)('that does nothing is told so, and loses nothing: %#', (interview, line, fault, part) => {
    const refused = typing(interview, line);
    expect(refused.interview).toBe(interview);
    expect(texts(refused)).toBe(formatInterviewFault(fault, interview.words, questionIds));
    expect(texts(refused)).toContain(part);
  });

  it('lists the answers with their numbers', () => {
    const listed = texts(typing(fourth, 'answers'));
    expect(listed).toContain('3 bed: 150 needles, 6.5 mm apart');
    expect(listed).toContain('4 swatch: not asked yet');
  });

  it('takes any name but a question, and says so', () => {
    const { lines, interview } = updateInterview(beginInterview({}, spoken()), '?');
    expect(lines.map(({ text }) => text)).toEqual(['Any name does. It heads the plan and the sheet.']);
    const asked = updateInterview(interview, 'why two rows');
    expect(asked.interview.at).toBe('name');
    expect(asked.lines.at(-1)?.text).toMatch(/^Is the bag called "why two rows"\? /);
    expect(updateInterview(interview, '"why two rows"').interview.answers.name?.line).toBe('"why two rows"');
    expect(updateInterview(interview, 'Wherever').interview.at).toBe('size');
  });

  it.each(['what is a swatch?', 'What are swatches', '? swatch', 'words swatch', '?', '?swatch'])(
    '%s explains it without losing the place',
    (line) => {
      const explained = typing(fourth, line);
      expect(explained.interview).toBe(fourth);
      expect(texts(explained)).toMatch(/^Swatch: A test piece of plain knitting/);
    },
  );

  it('asks in inches from then on, and leaves what was measured in centimetres as it was', () => {
    const inches = typing(fourth, 'units in');
    expect(inches.effect).toEqual({ kind: 'units', length: 'in' });
    expect(interviewView(inches.interview).asIn).toContain('40 stitches 7.5 in, 60 rows 8.5 in');
    expect(valuesOf(inches.interview.answers, spoken(imperial)).size).toEqual({ widthCm: 14, depthCm: 18 });
  });

  it('leaves, or begins the practice bag, at any question', () => {
    expect(typing(fourth, 'practice').effect).toEqual({ kind: 'practice' });
    expect(typing(planned.interview, 'quit').effect).toEqual({ kind: 'quit' });
  });
});

describe('a wrong answer', () => {
  it('gets one sentence, and the same question again', () => {
    const third = typing(start, ...diceAnswers.slice(0, 2)).interview;
    const wrong = typing(third, 'the old one');
    expect(wrong.interview).toBe(third);
    expect(wrong.lines).toHaveLength(1);
    expect(questionLines(wrong.interview)[0]).toBe(
      'question 3 of 8: Which needle bed do you have: how many needles, and how far apart?',
    );
  });
});

describe('answers kept on disk', () => {
  it('come back as they were', () => {
    expect(readDraft(draftOf(planned.interview.answers), spoken())).toEqual(planned.interview.answers);
  });

  it.each([
    '',
    'null',
    '[]',
    '{"size": 3, "bed": null}',
    '{"size": {"line": "so big", "length": "cm"}}',
    '{"size": {"line": "14 by 18", "length": "ells"}}',
    '{"name": {"line": "Dice bag"',
  ])('are passed over where they are none: %s', (text) => expect(readDraft(text, spoken())).toEqual({}));

  it('are kept one by one', () => {
    const text = '{"name": {"line": "Dice bag", "length": "cm"}, "bed": {"line": "?", "length": "cm"}}';
    expect(readDraft(text, spoken())).toEqual({ name: { line: 'Dice bag', length: 'cm' } });
  });
});

const anyLine = fc.oneof(
  fc.string({ maxLength: 40 }),
  fc.string({ unit: 'binary', maxLength: 12 }),
  fc.constantFrom(
    ...diceAnswers,
    '',
    'none',
    'back',
    'answers',
    'help',
    '?',
    'units in',
    'units cm',
    'change',
    'yes',
  ),
  fc
    .constantFrom(...questionIds, '1', '7', '9', 'first yarn')
    .chain((id) => fc.constantFrom(`change ${id}`, `change ${id} mint 3 g`, `change ${id} 1/0 by 0/0`, id)),
  fc
    .tuple(fc.double(), fc.constantFrom('by', 'needles', 'mm', '%', 'rows'), fc.integer())
    .map((parts) => parts.join(' ')),
);

describe('whatever is typed', () => {
  it.each([
    ['English', null],
    ['German', german],
  ] as const)(
    'never throws, keeps every answer, and ends in a brief that can be read, in %s',
    (_, language) => {
      speak(language);
      fc.assert(
        fc.property(fc.array(anyLine, { maxLength: 25 }), fc.constantFrom('cm', 'in'), (lines, length) => {
          let interview = beginInterview({}, spoken(unitsFor(length)));
          for (const line of lines) {
            const { interview: next, effect } = updateInterview(interview, line);
            for (const id of questionIds) {
              if (interview.answers[id]) expect(next.answers[id], `${id} after ${line}`).toBeDefined();
            }
            const made = briefFileOf(valuesOf(next.answers, next.words));
            expect(made.ok, line).toBe(true);
            if (made.ok && effect?.kind === 'begin') {
              const brief = readBrief(JSON.parse(JSON.stringify(made.value.json)));
              expect(brief.ok && planBag(brief.value).ok).toBe(true);
            }
            expect(interviewView(next).ask.length).toBeGreaterThan(0);
            expect(readDraft(draftOf(next.answers), spoken())).toEqual(next.answers);
            interview = next;
          }
        }),
        { numRuns: tries(300) },
      );
    },
  );
});

/** An instruction is read at a glance; the longest that this project allows itself. */
const longest = 160;

it.each([
  ['English', null],
  ['German', german],
] as const)('asks and answers in short sentences, in %s', (_, language) => {
  speak(language);
  const updates = ['help', 'answers', '?', 'foo bar', ''].flatMap((line) =>
    [start, planned.interview, typing(start, '', '', '', '', '', '', '', '').interview].map((at) =>
      typing(at, line),
    ),
  );
  const sentences = updates
    .flatMap(({ lines, interview }) => [...lines.map(({ text }) => text), ...questionLines(interview)])
    .flatMap((text) => text.split(/(?<=[.?!]) (?=\p{Lu})/u));
  expect(sentences.filter((sentence) => sentence.length > longest)).toEqual([]);
});

describe('answers from the shelf', () => {
  const yarn = { colour: '#d9b36c', metresPer100g: 210, grams: 43, pricePer100g: null, since: '' };
  const shelf = {
    beds: { workroom: { needles: 150, pitchMm: 6.5, without: ['comb' as const] } },
    swatches: {
      'sand on 6': { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, loopLengthMm: 17.1 },
    },
    yarns: { sand: yarn },
  };
  const answers = typing(start, 'Bag', '').interview.answers;

  it('are offered by name, and bring all that is kept with them', () => {
    const asked = beginInterview(answers, spoken(), { shelf });
    expect(interviewView(asked).asIn).toContain('workroom from your shelf');
    const { interview, lines } = typing(asked, 'Workroom', 'sand on 6', 'sand', 'none');
    expect(interview.at).toBe('slant');
    expect(lines[0]?.text).toContain('other yarns: none');
    const made = briefFileOf(valuesOf(interview.answers, spoken()));
    expect(made.ok && made.value.brief).toMatchObject({
      bed: { needles: 150, without: ['comb'] },
      swatch: { loopLengthMm: 17.1 },
    });
    expect(made.ok && made.value.brief.yarns.get('sand')).toMatchObject({ colour: '#d9b36c', grams: 43 });
    // They are kept from one start to the next, whatever becomes of the shelf.
    expect(readDraft(draftOf(interview.answers), spoken())).toEqual(interview.answers);
  });
});

describe('a swatch that is guided', () => {
  const before = typing(start, 'Bag', '', '150 needles 6.5 mm').interview;
  const guided = typing(before, 'knit').interview;
  const steps = ['6', '', '', '', '', '', '', '', '', '', ''];

  it('goes step by step, and its numbers make the answer', () => {
    expect(interviewView(before).asIn).toContain('knit, to be guided through one');
    expect(interviewView(guided)).toMatchObject({ place: 'the swatch, step 1 of 15', asIn: '6' });
    const castOn = interviewView(typing(guided, '6').interview);
    expect(castOn).toMatchObject({
      ask: expect.stringContaining('40 needles into work, L20 to R20'),
      asIn: null,
    });
    const measuring = typing(guided, ...steps);
    expect(interviewView(measuring.interview).ask).toContain('How wide are the 40 stitches');
    const { interview, lines } = typing(measuring.interview, '19,2 cm', '216 mm', '0', '68');
    expect([interview.at, interview.guide]).toEqual(['first', null]);
    expect(lines.at(-1)?.text).toContain('40 stitches over 19.2 cm, 60 rows over 21.6 cm');
    expect(valuesOf(interview.answers, spoken()).swatch).toEqual({
      stitches: 40,
      rows: 60,
      widthCm: 19.2,
      heightCm: 21.6,
      state: 'wet-relaxed',
      asideCm: 0.1,
      rowYarnCm: 68,
      stitchSize: '6',
    });
    const made = briefFileOf(valuesOf(interview.answers, spoken()));
    // 68 cm in 40 stitches.
    expect(made.ok && made.value.brief.swatch).toMatchObject({ loopLengthMm: 17, stitchSize: '6' });
  });

  it('keeps its place from one start to the next, and goes back step by step', () => {
    const { interview } = typing(guided, ...steps, '19.2');
    const draft = draftOf(interview.answers, interview.guide);
    const again = beginInterview(readDraft(draft, spoken()), spoken(), { guide: readDraftGuide(draft) });
    expect(interviewView(again)).toEqual(interviewView(interview));
    expect(interviewView(typing(again, 'back').interview).ask).toContain('How wide');
    expect(typing(guided, 'back').interview).toMatchObject({ at: 'swatch', guide: null });
    expect(typing(again, 'stop').interview).toMatchObject({ at: 'swatch', guide: null });
  });

  it.each([
    ['so wide', 'Type how wide it is'],
    ['', 'Type how wide it is'],
    ['-3', 'Type how wide it is'],
  ])('takes no %j for a width', (line, told) => {
    expect(texts(typing(guided, ...steps, line))).toContain(told);
  });

  it('may pass by what it does without, and has as many stitches as a small bed', () => {
    expect(texts(typing(guided, '6', 'yes I did'))).toContain('Press Enter when it is done');
    const small = typing(start, 'Bag', '', '30 needles 9 mm', 'knit', '').interview;
    expect(interviewView(small).ask).toContain('26 needles into work, L13 to R13');
    const { interview } = typing(guided, 'skip', ...steps.slice(1), '19', '21', '', 'dunno');
    expect(valuesOf(interview.answers, spoken()).swatch).toEqual({
      stitches: 40,
      rows: 60,
      widthCm: 19,
      heightCm: 21,
      state: 'wet-relaxed',
    });
  });
});
