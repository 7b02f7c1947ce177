/** Questions are answered as people answer them: with the number, the side or the needle alone. The bag is invented. */
import { afterEach, describe, expect, it } from 'vitest';
import { german, speak, spoken } from '../../../test/fixtures/spoken.ts';
import type { OpenQuestion } from '../../session/diagnose/question.ts';
import { parseLine } from '../parse-line.ts';

afterEach(() => speak(null));

const asking = (question: OpenQuestion, offers = 0) => ({
  yarns: ['plum', 'mint'],
  marks: [],
  knittedRows: 63,
  stripeRows: 2,
  question,
  offers,
});

const fact = (name: Extract<OpenQuestion, { about: 'fact' }>['fact']): OpenQuestion => ({
  about: 'fact',
  fact: name,
});

describe('a bare answer', () => {
  it.each([
    ['left', fact('carriage'), { carriage: 'left' }],
    ['R', fact('carriage'), { carriage: 'right' }],
    ['R10', fact('left'), { left: 'R10' }],
    ['r55', fact('right'), { right: 'R55' }],
    ['45', fact('stitches'), { stitches: 45 }],
    ['3', fact('rowsOfColour'), { rowsOfColour: 3 }],
    ['3.', fact('rowsOfColour'), { rowsOfColour: 3 }],
    ['2', fact('rowCounter'), { rowCounter: 2 }],
    ['5', fact('stripesCounted'), { stripesCounted: 5 }],
    ['8', fact('wasteRows'), { wasteRows: 8 }],
    ['1', fact('piecesDone'), { piecesDone: 1 }],
    ['nothing', fact('feeder'), { feeder: null }],
    ['yes', { about: 'loose', which: 'only' }, { looseEdgeLoop: true }],
    ['no', { about: 'loose', which: 'only' }, { looseEdgeLoop: false }],
  ] as const)('%s adds to what was seen', (typed, question, seen) => {
    const parsed = parseLine(typed, spoken(), asking(question));
    expect(parsed).toMatchObject({ ok: true, value: { kind: 'find', more: true, told: { seen } } });
  });

  it.each([
    ['4', 'move', { by: 'move', number: 4 }],
    ['3', 'stripe', { by: 'stripe', number: 3 }],
    ['12', 'row', { by: 'row', number: 12 }],
  ] as const)('%s tells where the slip is, by its %s', (typed, about, moment) => {
    const parsed = parseLine(typed, spoken(), asking({ about, which: 'only' }));
    expect(parsed).toMatchObject({ ok: true, value: { kind: 'find', more: true, told: { moment } } });
  });

  it('may be given in German', () => {
    speak(german);
    const side = parseLine('links', spoken(), asking(fact('carriage')));
    expect(side).toMatchObject({ value: { told: { seen: { carriage: 'left' } } } });
    const yarn = parseLine('nichts', spoken(), asking(fact('feeder')));
    expect(yarn).toMatchObject({ value: { told: { seen: { feeder: null } } } });
  });

  it('may be that nobody knows', () => {
    const parsed = parseLine("I don't know", spoken(), asking(fact('rowCounter')));
    expect(parsed).toMatchObject({ ok: true, value: { kind: 'find', more: true, unsure: true } });
  });

  it('is a round where the cord looks the same through many', () => {
    const rounds = {
      about: 'many-steps',
      from: 245,
      through: 270,
      part: 'cord',
      draw: 'only',
      round: 40,
    } as const;
    const parsed = parseLine('40', spoken(), asking(rounds));
    expect(parsed).toMatchObject({ ok: false, fault: { code: 'chat/meant', line: 'go round 40' } });
  });

  it('that is no number of the question tells how an offer is taken', () => {
    const parsed = parseLine('2', spoken(), asking(fact('carriage'), 2));
    expect(parsed).toMatchObject({ ok: false, fault: { code: 'chat/meant', line: 'choose 2' } });
  });
});
