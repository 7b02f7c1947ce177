/** Colour difference, colour vision and contrast, against published values and a general colour library. */

import {
  converter,
  differenceCiede2000,
  filterDeficiencyDeuter,
  filterDeficiencyProt,
  filterDeficiencyTrit,
} from 'culori';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../source/planning/plan.ts';
import {
  alikeNeighbours,
  alikeTo,
  seenBy,
  type VisionType,
  visionTypes,
} from '../../source/planning/shades.ts';
import {
  colourDifference,
  contrastRatio,
  inkOn,
  type Lab,
  labOf,
  linear,
  parseColour,
} from '../../source/shared/colour.ts';
import { yarnSigns } from '../../source/sheet/yarn-signs.ts';
import { diceBagWith, twoColours } from '../fixtures/sheets.ts';

/**
 * Table 1 of G. Sharma, W. Wu and E. N. Dalal, "The CIEDE2000 color-difference formula", Color Research and Application
 * 30 (2005), 21–30: L*, a*, b* twice, and the difference. Written from memory, then found to agree with a library.
 */
const sharmaPairs: readonly (readonly number[])[] = [
  [50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425],
  [50, 3.1571, -77.2803, 50, 0, -82.7485, 2.8615],
  [50, 2.8361, -74.02, 50, 0, -82.7485, 3.4412],
  [50, -1.3802, -84.2814, 50, 0, -82.7485, 1],
  [50, -1.1848, -84.8006, 50, 0, -82.7485, 1],
  [50, -0.9009, -85.5211, 50, 0, -82.7485, 1],
  [50, 0, 0, 50, -1, 2, 2.3669],
  [50, -1, 2, 50, 0, 0, 2.3669],
  [50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792],
  [50, 2.49, -0.001, 50, -2.49, 0.001, 7.1792],
  [50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195],
  [50, 2.49, -0.001, 50, -2.49, 0.0012, 7.2195],
  [50, -0.001, 2.49, 50, 0.0009, -2.49, 4.8045],
  [50, -0.001, 2.49, 50, 0.001, -2.49, 4.8045],
  [50, -0.001, 2.49, 50, 0.0011, -2.49, 4.7461],
  [50, 2.5, 0, 50, 0, -2.5, 4.3065],
  [50, 2.5, 0, 73, 25, -18, 27.1492],
  [50, 2.5, 0, 61, -5, 29, 22.8977],
  [50, 2.5, 0, 56, -27, -3, 31.903],
  [50, 2.5, 0, 58, 24, 15, 19.4535],
  [50, 2.5, 0, 50, 3.1736, 0.5854, 1],
  [50, 2.5, 0, 50, 3.2972, 0, 1],
  [50, 2.5, 0, 50, 1.8634, 0.5757, 1],
  [50, 2.5, 0, 50, 3.2592, 0.335, 1],
  [60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644],
  [63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.263],
  [61.2901, 3.7196, -5.3901, 61.4292, 2.248, -4.962, 1.8731],
  [35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645],
  [22.7233, 20.0904, -46.694, 23.0331, 14.973, -42.5619, 2.0373],
  [36.4612, 47.858, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146],
  [90.8027, -2.0831, 1.441, 91.1528, -1.6435, 0.0447, 1.4441],
  [90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381],
  [6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377],
  [2.0776, 0.0795, -1.135, 0.9033, -0.0636, -0.5514, 0.9082],
];

const colour = (): fc.Arbitrary<string> =>
  fc.integer({ min: 0, max: 0xffffff }).map((number) => `#${number.toString(16).padStart(6, '0')}`);
const toLab = converter('lab65');

describe('colour difference', () => {
  it.each(sharmaPairs)('of (%d, %d, %d) and (%d, %d, %d) is %d', (l1, a1, b1, l2, a2, b2, difference) => {
    const [one, other] = [[l1, a1, b1] as unknown as Lab, [l2, a2, b2] as unknown as Lab];
    expect(colourDifference(one, other)).toBeCloseTo(difference ?? Number.NaN, 4);
    expect(colourDifference(other, one)).toBeCloseTo(difference ?? Number.NaN, 4);
  });

  it('agrees with a colour library over colours at random', () => {
    const reference = differenceCiede2000();
    fc.assert(
      fc.property(colour(), colour(), (one, other) => {
        const ours = colourDifference(labOf(linear(parseColour(one))), labOf(linear(parseColour(other))));
        expect(ours).toBeCloseTo(reference(one, other), 1);
      }),
    );
  });

  it('starts from the same CIELAB as the library', () => {
    fc.assert(
      fc.property(colour(), (one) => {
        const { l, a, b } = toLab(one) ?? { l: 0, a: 0, b: 0 };
        const ours = labOf(linear(parseColour(one)));
        for (const [i, value] of [l, a, b].entries()) expect(ours[i]).toBeCloseTo(value, 1);
      }),
    );
  });
});

describe('colour vision', () => {
  const reference: Readonly<Record<VisionType, ReturnType<typeof filterDeficiencyProt>>> = {
    protan: filterDeficiencyProt(1),
    deutan: filterDeficiencyDeuter(1),
    tritan: filterDeficiencyTrit(1),
  };

  it.each(visionTypes)('of %s eyes uses the published matrix, as the library has it', (type) => {
    fc.assert(
      fc.property(colour(), (one) => {
        const light = linear(parseColour(one));
        // The library applies the matrix to whatever three numbers it is given: here linear light.
        const [r, g, b] = light;
        const seen = reference[type]({ mode: 'rgb', r, g, b });
        const ours = seenBy(type, light);
        for (const [i, value] of [seen.r, seen.g, seen.b].entries()) expect(ours[i]).toBeCloseTo(value, 6);
      }),
    );
  });

  it.each(visionTypes)('of %s eyes leaves greys alone', (type) => {
    for (const value of [0, 0.2, 0.5, 1]) {
      for (const channel of seenBy(type, [value, value, value])) expect(channel).toBeCloseTo(value, 5);
    }
  });

  it('finds red and green of one lightness alike to red-green types only', () => {
    expect(alikeTo('#b4564e', '#7d7a3a')).toEqual(['deutan']);
    expect(alikeTo('#6b2d5c', '#9fd8c2')).toBeNull();
  });

  it('finds neighbouring blues and greens alike to tritan eyes only', () => {
    expect(alikeTo('#2c7fb8', '#2a8f8a')).toEqual(['tritan']);
  });

  it('finds two near shades alike to everybody', () => {
    expect(alikeTo('#6b2d5c', '#6b3560')).toBe('everybody');
  });
});

describe('contrast', () => {
  it('runs from 1 to 21, and meets the values usually quoted for greys on white', () => {
    expect(contrastRatio('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrastRatio('#ffffff', '#ffffff')).toBe(1);
    // WCAG techniques: #767676 is the lightest grey that passes 4.5 on white, #777777 does not.
    expect(contrastRatio('#767676', '#ffffff')).toBeGreaterThan(4.5);
    expect(contrastRatio('#777777', '#ffffff')).toBeLessThan(4.5);
  });

  it('of the ink chosen for a colour is always enough to read', () => {
    fc.assert(
      fc.property(colour(), (one) => {
        expect(contrastRatio(one, inkOn(one))).toBeGreaterThanOrEqual(4.5);
      }),
    );
  });
});

const shadeWarnings = ({ brief, stripes }: Plan) => alikeNeighbours(brief, stripes);

describe('neighbours that look alike', () => {
  it('are silent about plum and mint', () => {
    expect(shadeWarnings(twoColours('#6b2d5c', '#9fd8c2'))).toEqual([]);
  });

  it('name the two neighbours once, and whom they look alike to', () => {
    expect(shadeWarnings(twoColours('#b4564e', '#7d7a3a'))).toEqual([
      { first: 'plum', second: 'mint', to: ['deutan'] },
    ]);
  });

  it('look at neighbours only', () => {
    const yarns = {
      plum: { colour: '#6b2d5c', metresPer100g: 190 },
      mint: { colour: '#9fd8c2', metresPer100g: 190 },
      damson: { colour: '#6b3560', metresPer100g: 190 },
      sand: { colour: '#e8d5a0', metresPer100g: 190 },
    };
    const inTurn = (...names: string[]) => names.map((yarn) => ({ yarn, rows: 2 }));
    const apart = diceBagWith({ yarns, stripes: inTurn('plum', 'mint', 'damson', 'sand') });
    expect(shadeWarnings(apart)).toEqual([]);
    const acrossTheGraft = diceBagWith({ yarns, stripes: inTurn('plum', 'mint', 'sand', 'damson') });
    expect(shadeWarnings(acrossTheGraft).map(({ first, second }) => [first, second])).toEqual([
      ['damson', 'plum'],
    ]);
  });
});

describe('signs of yarns', () => {
  const marksOf = (first: string, second: string, medium: 'true' | 'print') =>
    [...yarnSigns(twoColours(first, second), medium).values()].map(
      ({ letter, pattern }) => `${letter} ${pattern}`,
    );

  it('are letters of their names, and plain where colours differ enough', () => {
    expect(marksOf('#6b2d5c', '#9fd8c2', 'print')).toEqual(['P plain', 'M plain']);
  });

  it('take a pattern where two colours look alike to somebody', () => {
    expect(marksOf('#b4564e', '#7d7a3a', 'true')).toEqual(['P plain', 'M rising']);
  });

  it('take a pattern in print where two colours copy to the same grey', () => {
    expect(marksOf('#d9b36c', '#7fc8e8', 'true')).toEqual(['P plain', 'M plain']);
    expect(marksOf('#d9b36c', '#7fc8e8', 'print')).toEqual(['P plain', 'M rising']);
  });

  it('never share a letter', () => {
    const names = ['plum', 'pine', 'peach', 'Pine', 'παπί', '!!'];
    const yarns = Object.fromEntries(names.map((name) => [name, { colour: '#6b2d5c', metresPer100g: 190 }]));
    const stripes = names.map((yarn) => ({ yarn, rows: 2 }));
    const plan = diceBagWith({ yarns, stripes, cord: { yarn: 'plum' } });
    const letters = [...yarnSigns(plan, 'true').values()].map(({ letter }) => letter);
    expect(letters).toEqual(['P', 'I', 'E', 'N', 'A', 'B']);
  });
});
