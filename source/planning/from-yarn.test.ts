/** What could be made of a shelf, and what keeps a bag from being larger: invented yarns, counted by hand. */
import { describe, expect, it } from 'vitest';
import { briefOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../test/tools/result.ts';
import { couldMake, planFromYarn } from './from-yarn.ts';
import { emptyShelf, readShelf, type Shelf } from './shelf.ts';

const plain = (metresPer100g: number, grams: number | null) => ({
  colour: '#6b2d5c',
  metresPer100g,
  ...(grams === null ? {} : { grams }),
});
const yarn = (metresPer100g: number, grams: number | null) => ({
  ...plain(metresPer100g, grams),
  since: '2031-01-01T00:00:00.000Z',
});

function shelf(yarns: Record<string, ReturnType<typeof yarn>>, more: object = {}): Shelf {
  const read = readShelf({ beds: { flat: { needles: 150, pitchMm: 6.5 } }, swatches: {}, yarns, ...more });
  if (!read) throw new Error('no shelf');
  return read;
}

describe('what could be made', () => {
  const made = (yarns: Record<string, ReturnType<typeof yarn>>) => couldMake(shelf(yarns))?.bags ?? null;
  const names = (yarns: Record<string, ReturnType<typeof yarn>>) =>
    made(yarns)?.map((bag) => [bag.yarns.join('+'), bag.scraps]);

  it('is nothing without a bed, or of fewer than two weighed yarns', () => {
    const two = { plum: yarn(190, 50), mint: yarn(190, 40) };
    expect(couldMake(emptyShelf)).toBeNull();
    expect(couldMake({ ...shelf(two), beds: {} })).toBeNull();
    expect(made({ plum: yarn(190, 50) })).toBeNull();
    expect(made({ plum: yarn(190, 50), mint: yarn(190, null) })).toBeNull();
    expect(made({ plum: yarn(190, 50), mint: yarn(190, 0) })).toBeNull();
    expect(made(two)).toHaveLength(1);
  });

  it('is a bag of each two as thick, the heaviest first, and of scraps of three', () => {
    expect(names({ plum: yarn(190, 30), mint: yarn(190, 50), sand: yarn(190, 40) })).toEqual([
      ['mint+sand', false],
      ['mint+plum', false],
      ['sand+plum', false],
      ['mint+sand+plum', true],
    ]);
  });

  it('puts no yarns together that differ by more than a fifth', () => {
    expect(names({ plum: yarn(100, 50), mint: yarn(120, 40) })).toEqual([['plum+mint', false]]);
    expect(names({ plum: yarn(100, 50), mint: yarn(121, 40) })).toEqual([]);
    // Sand goes with either of the others, which do not go together.
    expect(names({ plum: yarn(100, 50), sand: yarn(115, 40), mint: yarn(130, 30) })).toEqual([
      ['plum+sand', false],
      ['sand+mint', false],
      ['plum+sand+mint', true],
    ]);
  });

  it('is as large as that bag planned by itself, of six yarns at the most', () => {
    const yarns = { plum: yarn(190, 50), mint: yarn(190, 40) };
    const swatch = { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 };
    const could = couldMake(shelf(yarns, { swatches: { plain: swatch } }));
    const brief = briefOf({
      ...stripedBrief(36, 64),
      bed: { needles: 150, pitchMm: 6.5 },
      bag: { widthCm: 14, depthCm: 18 },
      yarns: { plum: plain(190, 50), mint: plain(190, 40) },
    }).brief;
    const { size } = valueIn(planFromYarn(brief)).plan;
    expect(could).toMatchObject({ bed: 'flat', swatch: 'plain' });
    expect(could?.bags[0]?.size).toEqual({ widthCm: size.widthCm, depthCm: size.depthCm });
    const many = Object.fromEntries('abcdefg'.split('').map((name, i) => [name, yarn(190, 50 - i)]));
    const bags = couldMake(shelf(many))?.bags ?? [];
    expect(bags).toHaveLength(16);
    expect(bags.at(-1)?.yarns).toEqual(['a', 'b', 'c', 'd', 'e', 'f']);
  });

  it('is no bag of too little', () => {
    expect(made({ plum: yarn(190, 1), mint: yarn(190, 1) })?.[0]?.size).toBeNull();
  });
});

describe('the largest bag', () => {
  const brief = (plum: number | null, mint: number | null, needles = 150) => {
    const yarns = { plum: plain(190, plum), mint: plain(190, mint) };
    return briefOf({ ...stripedBrief(36, 64, needles), yarns, bag: { widthCm: 14, depthCm: 18 } }).brief;
  };

  it('cannot be told of yarn that was not weighed', () => {
    expect(faultIn(planFromYarn(brief(null, null)))).toEqual({ code: 'plan/yarn-not-weighed' });
    expect(planFromYarn(brief(40, null)).ok).toBe(true);
  });

  it('ends with the yarn that is short for the next, or with the bed', () => {
    expect(valueIn(planFromYarn(brief(40, 20))).limit).toEqual({ by: 'yarn', yarn: 'mint' });
    expect(valueIn(planFromYarn(brief(20, 40))).limit).toEqual({ by: 'yarn', yarn: 'plum' });
    expect(valueIn(planFromYarn(brief(999, 999, 44))).limit).toEqual({ by: 'bed', usable: 40 });
  });

  it('is none of too little, and that is told of the smallest', () => {
    expect(faultIn(planFromYarn(brief(1, 40)))).toMatchObject({ code: 'plan/yarn-for-no-bag', yarn: 'plum' });
  });
});
