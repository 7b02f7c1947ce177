/** Invented briefs by size and by contents, with gauges of real yarns on real beds, for the laws of planning. */
import fc from 'fast-check';

const yarnNames = ['plum', 'mint', 'sand', 'slate', 'rust', 'moss'];

/** A repeat of one to four stripes whose neighbours differ. */
const stripes = fc
  .tuple(
    fc.integer({ min: 1, max: 4 }),
    fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 4, maxLength: 4 }),
  )
  .map(([count, halves]) =>
    Array.from({ length: count }, (_, i) => ({ yarn: yarnNames[i] ?? '', rows: (halves[i] ?? 1) * 2 })),
  );

const bags = {
  size: fc.record({
    widthCm: fc.double({ min: 3, max: 45, noNaN: true }),
    depthCm: fc.double({ min: 3, max: 45, noNaN: true }),
  }),
  contents: fc.record({
    contents: fc.record(
      {
        girthCm: fc.double({ min: 4, max: 90, noNaN: true }),
        heightCm: fc.double({ min: 1, max: 45, noNaN: true }),
        thicknessCm: fc.double({ min: 0, max: 20, noNaN: true }),
        easePercent: fc.double({ min: 0, max: 60, noNaN: true }),
      },
      { requiredKeys: ['girthCm', 'heightCm'] },
    ),
  }),
};

const states = ['dry-relaxed', 'wet-relaxed', 'fully-relaxed'] as const;
type State = (typeof states)[number];

export interface SizedBrief {
  readonly bed: { readonly needles: number; readonly pitchMm: number };
  readonly swatch: {
    readonly stitches: number;
    readonly rows: number;
    readonly widthCm: number;
    readonly heightCm: number;
    readonly state: State;
    readonly asideCm?: number;
  };
  readonly finishState: State;
  readonly crawl: 'left' | 'right';
  readonly edgeStitches: number;
  readonly shapeEveryRows: number;
  readonly bag: { readonly contents?: { readonly thicknessCm?: number }; readonly boxedCm?: number };
  readonly stripes: readonly { readonly yarn: string; readonly rows: number }[];
  readonly yarns: Readonly<Record<string, { readonly metresPer100g: number; readonly grams?: number }>>;
}

/** Sound briefs of one kind of wish; a few ask for more stitches than the bed has. */
export const sizedBrief = <Kind extends keyof typeof bags>(kind: Kind) =>
  fc
    .record({
      stitchMm: fc.double({ min: 2, max: 9, noNaN: true }),
      aspect: fc.double({ min: 1.1, max: 1.6, noNaN: true }),
      metresPer100g: fc.integer({ min: 60, max: 800 }),
      grams: fc.array(fc.option(fc.integer({ min: 5, max: 150 }), { nil: undefined, freq: 4 }), {
        minLength: 4,
        maxLength: 4,
      }),
      bag: bags[kind] as fc.Arbitrary<Record<string, unknown>>,
      stripes,
      edgeStitches: fc.integer({ min: 1, max: 3 }),
      shapeEveryRows: fc.constantFrom(2, 4, 6, 8),
      home: fc.constantFrom('left', 'right'),
      needles: fc.integer({ min: 150, max: 400 }),
      state: fc.constantFrom(...states),
      finishState: fc.constantFrom(...states),
      crawl: fc.constantFrom('left' as const, 'right' as const),
      asideShare: fc.option(fc.double({ min: -0.3, max: 0.3, noNaN: true }), { nil: undefined }),
    })
    .map(({ stitchMm, aspect, metresPer100g, grams, needles, home, state, asideShare, ...pick }) => ({
      name: 'Random bag',
      bed: { needles, pitchMm: Math.min(20, stitchMm * 1.3) },
      swatch: {
        stitches: 40,
        rows: 60,
        widthCm: stitchMm * 4,
        heightCm: (stitchMm / aspect) * 6,
        state,
        ...(asideShare === undefined ? {} : { asideCm: asideShare * (stitchMm / aspect) * 6 }),
      },
      homeSide: home,
      yarns: Object.fromEntries(
        pick.stripes.map(({ yarn }, i) => [
          yarn,
          { colour: '#6b2d5c', metresPer100g, ...(grams[i] === undefined ? {} : { grams: grams[i] }) },
        ]),
      ),
      ...pick,
    }));

/** Leftovers of two to six yarns for a small bag; many of them do not reach. */
export const scrapsBrief = () =>
  fc
    .record({
      grams: fc.array(fc.double({ min: 0.1, max: 12, noNaN: true }), { minLength: 2, maxLength: 6 }),
      stitches: fc.integer({ min: 6, max: 14 }),
      stripeCount: fc.integer({ min: 2, max: 8 }),
      stripeRows: fc.constantFrom(2, 4, 6),
      cordGrams: fc.double({ min: 2, max: 12, noNaN: true }),
    })
    .map(({ grams, stitches, stripeCount, stripeRows, cordGrams }) => ({
      name: 'Random scraps',
      bed: { needles: 150, pitchMm: 6.5 },
      swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 },
      bag: { stitches, rows: stripeRows * stripeCount },
      yarns: Object.fromEntries(
        grams.map((own, i) => [
          yarnNames[i] ?? '',
          { colour: '#6b2d5c', metresPer100g: 150, grams: i === 0 ? own + cordGrams : own },
        ]),
      ),
      scraps: { rows: stripeRows },
      cord: { yarn: 'plum', tieCm: 3 },
    }));
