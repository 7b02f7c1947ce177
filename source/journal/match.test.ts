/** Bags to match one that was made: an invented one, of two yarns, measured a little narrower than its plan. */
import { expect, it } from 'vitest';
import { briefOf, jobOf } from '../../test/fixtures/plan-of.ts';
import { valueIn } from '../../test/tools/result.ts';
import { readBrief } from '../planning/parse-brief.ts';
import { planBag } from '../planning/plan-bag.ts';
import { type Session, startSession } from '../session/session.ts';
import { updateSession } from '../session/update-session.ts';
import { type MatchWish, matchBrief, nextName } from './match.ts';

const yarn = { colour: '#6b2d5c', metresPer100g: 190, grams: 60 };
const json = {
  name: 'Small bag',
  bed: { needles: 150, pitchMm: 6.5 },
  swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, loopLengthMm: 17.1 },
  bag: { widthCm: 14, depthCm: 18 },
  yarns: { plum: yarn, mint: { ...yarn, colour: '#9fd8c2' } },
  stripes: [
    { yarn: 'plum', rows: 4 },
    { yarn: 'mint', rows: 2 },
  ],
  cord: { yarn: 'mint' },
};

function finished(): Session {
  const start = startSession(jobOf(json));
  const { widthCm, depthCm } = start.job.plan.size;
  const commands = [
    { do: 'confirm', count: start.job.stepCount },
    { do: 'measured', widthCm: 0.95 * widthCm, depthCm },
  ] as const;
  return commands.reduce<Session>((session, command) => {
    return valueIn(updateSession(session, command));
  }, start);
}

const first = finished();
const { plan } = first.job;

function match(wish: MatchWish, isLearned = false) {
  const made = matchBrief(briefOf(json), first, wish, { name: 'Next bag', isLearned });
  const brief = readBrief(made);
  return valueIn(brief.ok ? planBag(brief.value) : brief);
}

it('the same again has the same counts and stripes', () => {
  const { stitches, rows, stripes, brief } = match({ is: 'same' });
  expect([stitches, rows, stripes]).toEqual([plan.stitches, plan.rows, plan.stripes]);
  expect(brief.name).toBe('Next bag');
});

it('turned, each yarn takes the place of the next, in the cord too', () => {
  const { brief, rows } = match({ is: 'turned' });
  expect([brief.stripes, brief.cord.yarn, rows]).toEqual([
    [
      { yarn: 'mint', rows: 4 },
      { yarn: 'plum', rows: 2 },
    ],
    'plum',
    plan.rows,
  ]);
});

it('a size up is a fifth wider, as near as whole repeats come, and a size down undoes it', () => {
  const { size } = match({ is: 'larger' });
  const [smaller, larger] = match({ is: 'larger' }).neighbours.map(({ widthCm }) => widthCm);
  const wanted = 1.2 * plan.size.widthCm;
  const off = Math.abs(size.widthCm - wanted);
  expect(off).toBeLessThanOrEqual(Math.abs((smaller ?? 0) - wanted));
  expect(off).toBeLessThanOrEqual(Math.abs((larger ?? 0) - wanted));
  expect(match({ is: 'smaller' }).size.widthCm).toBeLessThan(plan.size.widthCm);
});

it('another size is asked for wider where the first came out narrower, unless more bags tell', () => {
  const asked = { is: 'size', widthCm: 19, depthCm: 20 } as const;
  expect(match(asked).size.wantedWidthCm).toBeCloseTo(20, 9);
  expect(match(asked).size.wantedDepthCm).toBeCloseTo(20, 9);
  expect(match(asked, true).size.wantedWidthCm).toBe(19);
});

it('other yarns take the places of the old ones, as thick where nothing is said', () => {
  const sand = { name: 'sand', colour: '#d9b36c', metresPer100g: null, grams: null };
  const { brief } = match({ is: 'yarns', yarns: [sand, { ...sand, name: 'plum', metresPer100g: 90 }] });
  expect(brief.stripes.map((stripe) => stripe.yarn)).toEqual(['sand', 'plum']);
  expect(brief.yarns.get('sand')).toMatchObject({ colour: '#d9b36c', metresPer100g: 190, grams: null });
  // A yarn that the bag has already is that yarn.
  expect(brief.yarns.get('plum')).toMatchObject(yarn);
});

it('is called by the next number that is free', () => {
  expect(nextName('Dice bag', ['Dice bag'])).toBe('Dice bag 2');
  expect(nextName('Dice bag 2', ['Dice bag', 'Dice bag 2', 'Dice bag 3'])).toBe('Dice bag 4');
});
