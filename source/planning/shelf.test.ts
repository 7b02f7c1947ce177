/** Beds, swatches and yarns under names, and a brief that names them; all of it is invented. */
import { describe, expect, it } from 'vitest';
import { planOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../test/tools/result.ts';
import {
  emptyShelf,
  nameOnShelf,
  namesShelf,
  readShelf,
  type Shelf,
  shelfJson,
  swatchToKeep,
  takeFromShelf,
  withKept,
  without,
} from './shelf.ts';

const workroom = { needles: 150, pitchMm: 6.5 };
const wool = { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 };
const plum = { colour: '#6b2d5c', metresPer100g: 190, grams: 60 };
const sand = { colour: '#d9b36c', metresPer100g: 190 };
const since = '2031-03-04T18:00:00.000Z';

const shelf = readShelf({
  beds: { Workroom: workroom },
  swatches: { wool },
  yarns: { plum: { ...plum, since }, sand: { ...sand, since } },
}) as Shelf;

const taken = (json: object): unknown => valueIn(takeFromShelf(json as never, shelf));

describe('a brief', () => {
  it('has what is kept in place of each name, whatever capitals it has, and all else as it was', () => {
    expect(taken({ name: 'Bag', bed: ' workroom', swatch: 'Wool', yarns: ['Plum', 'sand'] })).toEqual({
      name: 'Bag',
      bed: workroom,
      swatch: wool,
      yarns: { Plum: plum, sand },
    });
  });

  it('may call a kept yarn otherwise, and have others that are not kept', () => {
    const sky = { colour: '#88bbee', metresPer100g: 200 };
    expect(taken({ yarns: { berry: 'plum', sky } })).toMatchObject({ yarns: { berry: plum, sky } });
  });

  it('is as it was where it names nothing', () => {
    const json = { bed: workroom, swatch: wool, yarns: { sand } };
    expect(namesShelf(json)).toBe(false);
    expect(taken(json)).toEqual(json);
  });

  it.each([
    [{ bed: 'workroom' }, true],
    [{ swatch: 'wool' }, true],
    [{ yarns: ['plum'] }, true],
    [{ yarns: { berry: 'plum', sky: {} } }, true],
    [{ yarns: [3] }, false],
    [{ yarns: {} }, false],
    [['plum'], false],
    ['plum', false],
    [null, false],
  ])('%j names something kept: %j', (json, names) => expect(namesShelf(json)).toBe(names));

  it.each([
    [{ bed: 'attic' }, { kind: 'bed', name: 'attic', known: ['Workroom'] }],
    [{ swatch: 'silk' }, { kind: 'swatch', name: 'silk', known: ['wool'] }],
    [{ yarns: ['plum', 'teal'] }, { kind: 'yarn', name: 'teal', known: ['plum', 'sand'] }],
  ])('that names what is not there is told what is: %j', (json, fault) => {
    expect(faultIn(takeFromShelf(json as never, shelf))).toEqual({ code: 'brief/not-on-shelf', ...fault });
  });
});

describe('the shelf', () => {
  it('is read as it was written, what was never weighed or priced left out', () => {
    expect(shelf.yarns.sand).toMatchObject({ grams: null, pricePer100g: null });
    expect(shelfJson(shelf)).toEqual({
      beds: { Workroom: workroom },
      swatches: { wool },
      yarns: { plum: { ...plum, since }, sand: { ...sand, since } },
    });
    expect(readShelf(shelfJson(shelf))).toEqual(shelf);
  });

  it.each([null, [], {}, { ...emptyShelf, beds: { attic: 3 } }, { ...emptyShelf, yarns: { plum } }])(
    'is not %j',
    (json) => expect(readShelf(json)).toBeNull(),
  );

  it('keeps one thing more or less, the others as they are', () => {
    const more = withKept(shelf, 'bed', 'attic', workroom);
    expect(Object.keys(more.beds)).toEqual(['Workroom', 'attic']);
    expect(more.yarns).toBe(shelf.yarns);
    expect(without(more, 'bed', 'Workroom').beds).toEqual({ attic: workroom });
    expect(nameOnShelf(more, 'bed', 'ATTIC')).toBe('attic');
    expect(nameOnShelf(without(more, 'bed', 'attic'), 'bed', 'attic')).toBeNull();
  });

  it('keeps a swatch as it was measured, and no guess', () => {
    const { brief } = planOf(stripedBrief(20, 24));
    expect(swatchToKeep(brief)).toMatchObject(wool);
    expect(swatchToKeep({ ...brief, swatch: { ...brief.swatch, guess: true } })).toBeNull();
  });
});
