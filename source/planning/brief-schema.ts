/** The shape and limits of a brief file, as one schema: it checks, and it yields the published JSON Schema. */
import * as v from 'valibot';

const between = (min: number, max: number) => v.pipe(v.number(), v.minValue(min), v.maxValue(max));
const whole = (min: number, max: number) => v.pipe(between(min, max), v.integer());
const evenRows = (min: number, max: number) => v.pipe(whole(min, max), v.multipleOf(2));
const side = v.picklist(['left', 'right']);
const state = v.picklist(['dry-relaxed', 'wet-relaxed', 'fully-relaxed']);

export const colourPattern = /^#[0-9A-Fa-f]{6}$/;
/** One printable line without spaces at its ends; no controls, no marks that turn the writing round. */
const namePattern =
  /^(?! )[^\u0000-\u001f\u007f-\u009f\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff]+(?<! )$/;
const plainName = (most: number) =>
  v.pipe(v.string(), v.minLength(1), v.maxLength(most), v.regex(namePattern));
const yarnName = plainName(60);

/** Beside each way of saying the size: how deep the bottom is, its corners sewn across. */
const boxed = { boxedCm: v.optional(between(0, 300)) };

const sizeSchema = v.strictObject({ widthCm: between(1, 300), depthCm: between(1, 300), ...boxed });

const contentsSchema = v.strictObject({
  contents: v.strictObject({
    girthCm: between(1, 600),
    heightCm: between(0.5, 300),
    thicknessCm: v.optional(between(0, 300)),
    easePercent: v.optional(between(0, 300)),
  }),
  ...boxed,
});

const countsSchema = v.strictObject({ stitches: whole(1, 400), rows: whole(1, 20_000), ...boxed });

export const bedSchema = v.strictObject({
  needles: whole(10, 400),
  pitchMm: between(2, 20),
  marginNeedles: v.optional(whole(0, 50)),
  place: v.optional(v.picklist(['centre', 'end'])),
  park: v.optional(v.picklist(['home', 'ends'])),
  without: v.optional(v.pipe(v.array(v.picklist(['comb', 'slip', 'counter'])), v.maxLength(3))),
});

export const swatchSchema = v.strictObject({
  stitches: between(1, 2000),
  rows: between(1, 2000),
  widthCm: v.optional(between(0.5, 500)),
  heightCm: v.optional(between(0.5, 500)),
  widthIn: v.optional(between(0.2, 200)),
  heightIn: v.optional(between(0.2, 200)),
  state: v.optional(state),
  loopLengthMm: v.optional(between(1, 200)),
  rowYarnCm: v.optional(between(1, 10_000)),
  asideCm: v.optional(between(-100, 100)),
  stitchSize: v.optional(plainName(20)),
  guess: v.optional(v.boolean()),
});

export const yarnSchema = v.strictObject({
  colour: v.pipe(v.string(), v.regex(colourPattern)),
  metresPer100g: between(1, 100_000),
  grams: v.optional(between(0, 100_000)),
  pricePer100g: v.optional(between(0, 1_000_000)),
  run: v.optional(
    v.pipe(
      v.array(
        v.strictObject({
          colour: v.pipe(v.string(), v.regex(colourPattern)),
          metres: between(0.01, 10_000),
        }),
      ),
      v.minLength(2),
      v.maxLength(60),
    ),
  ),
});

export const briefSchema = v.strictObject({
  name: plainName(200),
  bed: bedSchema,
  swatch: swatchSchema,
  finishState: v.optional(state),
  bag: v.union([sizeSchema, contentsSchema, countsSchema]),
  crawl: v.optional(side),
  homeSide: v.optional(side),
  edgeStitches: v.optional(whole(1, 3)),
  shapeEveryRows: v.optional(v.picklist([2, 4, 6, 8])),
  hem: v.optional(v.strictObject({ rows: evenRows(2, 12), yarn: v.optional(yarnName) })),
  yarns: v.record(yarnName, yarnSchema),
  stripes: v.optional(
    v.pipe(
      v.array(v.strictObject({ yarn: yarnName, rows: evenRows(2, 40) })),
      v.minLength(1),
      v.maxLength(200),
    ),
  ),
  scraps: v.optional(v.strictObject({ rows: v.optional(evenRows(2, 40)) })),
  waste: v.optional(
    v.strictObject({
      yarn: v.optional(yarnName),
      rows: v.optional(whole(1, 60)),
      ravel: v.optional(v.picklist(['loop', 'cord'])),
    }),
  ),
  cord: v.optional(
    v.strictObject({
      stitches: v.optional(whole(2, 6)),
      yarn: v.optional(yarnName),
      tieCm: v.optional(between(0, 300)),
      draws: v.optional(v.picklist([1, 2])),
      roundsPer10Cm: v.optional(between(1, 500)),
    }),
  ),
  cost: v.optional(
    v.strictObject({
      perHour: v.optional(between(0, 1_000_000)),
      currency: v.optional(plainName(8)),
    }),
  ),
  learned: v.optional(
    v.strictObject({
      bags: whole(3, 1000),
      setAside: v.optional(whole(0, 1000)),
      widthFactor: between(0.5, 2),
      depthFactor: between(0.5, 2),
      spread: between(0, 0.5),
    }),
  ),
});

/** A brief as it stands in the file: checked field by field, nothing filled in. */
export type BriefJson = v.InferOutput<typeof briefSchema>;

/** The keys of `bag` that each of the three ways of saying how big it should be has to itself. */
export const bagWays = [sizeSchema, contentsSchema, countsSchema].map((schema) =>
  Object.keys(schema.entries).filter((key) => !(key in boxed)),
);

/** The one shape of `bag` that the keys point at, so that a fault names the field and not three alternatives. */
export function bagSchemaFor(bag: object) {
  if ('contents' in bag) return contentsSchema;
  return 'stitches' in bag || 'rows' in bag ? countsSchema : sizeSchema;
}
