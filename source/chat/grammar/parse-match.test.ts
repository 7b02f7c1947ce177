/** Which other bag a line asks for. */
import { describe, expect, it } from 'vitest';
import { spoken } from '../../../test/fixtures/spoken.ts';
import { faultIn, valueIn } from '../../../test/tools/result.ts';
import { imperial } from '../../shared/units.ts';
import { parseMatch } from '../commands/keeping.ts';

const wishOf = (rest: string): unknown => valueIn(parseMatch(rest, spoken()));

describe('another bag', () => {
  it.each([
    ['', { is: 'same' }],
    ['larger', { is: 'larger' }],
    ['BIGGER', { is: 'larger' }],
    ['größer', { is: 'larger' }],
    ['smaller', { is: 'smaller' }],
    ['kleiner', { is: 'smaller' }],
    ['turned', { is: 'turned' }],
    ['getauscht', { is: 'turned' }],
    ['16 by 20', { is: 'size', widthCm: 16, depthCm: 20 }],
  ])('%j', (rest, wish) => {
    expect(wishOf(rest)).toEqual({ kind: 'another', wish });
  });

  it('is of so many inches to those who measure in them', () => {
    expect(valueIn(parseMatch('6 by 8', spoken(imperial)))).toMatchObject({
      wish: { is: 'size', widthCm: expect.closeTo(15.24), depthCm: expect.closeTo(20.32) },
    });
  });

  it.each([
    ['in sand and slate', ['sand', 'slate']],
    ['in sand, slate, mint', ['sand', 'slate', 'mint']],
    ['in sand und slate', ['sand', 'slate']],
    ['IN sand', ['sand']],
  ])('%s is of those yarns', (rest, names) => {
    const wish = { is: 'yarns', yarns: names.map((name) => expect.objectContaining({ name })) };
    expect(wishOf(rest)).toEqual({ kind: 'another', wish });
  });

  it('takes colour, metres and grams of a yarn where they are told', () => {
    expect(wishOf('in sand #d9b36c 200 m 50 g')).toMatchObject({
      wish: { yarns: [{ name: 'sand', colour: '#d9b36c', metresPer100g: 200, grams: 50 }] },
    });
  });

  it.each(['sideways', 'in', 'in ', 'in 3 and 4'])('%j is none, and what fits is named', (rest) => {
    expect(faultIn(parseMatch(rest, spoken()))).toMatchObject({
      code: 'chat/not-a-choice',
      choices: ['larger', 'smaller', 'turned', 'in …'],
    });
  });
});
