/** The shape and limits of a brief file, as one schema: it checks, and it yields the published JSON Schema. */
import * as v from 'valibot';

const between = (min: number, max: number) =>
  v.pipe(v.number(), v.finite(), v.minValue(min), v.maxValue(max));
const whole = (min: number, max: number) => v.pipe(v.number(), v.integer(), v.minValue(min), v.maxValue(max));
const evenRows = (min: number, max: number) =>
  v.pipe(v.number(), v.integer(), v.minValue(min), v.maxValue(max), v.multipleOf(2));
const side = v.picklist(['left', 'right']);
const yarnName = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60));

const sizeSchema = v.strictObject({ widthCm: between(1, 300), depthCm: between(1, 300) });

const contentsSchema = v.strictObject({
  contents: v.strictObject({
    girthCm: between(1, 600),
    heightCm: between(0.5, 300),
    easePercent: v.optional(between(0, 300)),
  }),
});

const countsSchema = v.strictObject({ stitches: whole(1, 400), rows: whole(1, 20_000) });

export const briefSchema = v.strictObject({
  name: v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(200)),
  bed: v.strictObject({
    needles: whole(10, 400),
    pitchMm: between(2, 20),
    marginNeedles: v.optional(whole(0, 50)),
  }),
  swatch: v.strictObject({
    stitches: between(1, 2000),
    rows: between(1, 2000),
    widthCm: v.optional(between(0.5, 500)),
    heightCm: v.optional(between(0.5, 500)),
    widthIn: v.optional(between(0.2, 200)),
    heightIn: v.optional(between(0.2, 200)),
    state: v.optional(v.picklist(['dry-relaxed', 'wet-relaxed', 'fully relaxed'])),
    loopLengthMm: v.optional(between(1, 200)),
    rowYarnCm: v.optional(between(1, 10_000)),
  }),
  bag: v.union([sizeSchema, contentsSchema, countsSchema]),
  crawl: v.optional(side),
  homeSide: v.optional(side),
  edgeStitches: v.optional(whole(1, 3)),
  shapeEveryRows: v.optional(evenRows(2, 8)),
  yarns: v.record(
    yarnName,
    v.strictObject({
      colour: v.pipe(v.string(), v.regex(/^#[0-9a-f]{6}$/i)),
      metresPer100g: between(1, 100_000),
      grams: v.optional(between(0, 100_000)),
    }),
  ),
  stripes: v.pipe(
    v.array(v.strictObject({ yarn: yarnName, rows: evenRows(2, 40) })),
    v.minLength(1),
    v.maxLength(200),
  ),
  waste: v.optional(v.strictObject({ yarn: v.optional(yarnName), rows: v.optional(whole(1, 60)) })),
  cord: v.optional(
    v.strictObject({
      stitches: v.optional(whole(2, 6)),
      yarn: v.optional(yarnName),
      tieCm: v.optional(between(0, 300)),
      roundsPer10Cm: v.optional(between(1, 500)),
    }),
  ),
});

/** A brief as it stands in the file: checked field by field, nothing filled in. */
export type BriefFile = v.InferOutput<typeof briefSchema>;

/** The one shape of `bag` that the keys point at, so that a fault names the field and not three alternatives. */
export function bagSchemaFor(bag: unknown) {
  const keys = typeof bag === 'object' && bag !== null ? Object.keys(bag) : [];
  if (keys.includes('contents')) return contentsSchema;
  if (keys.includes('stitches') || keys.includes('rows')) return countsSchema;
  return sizeSchema;
}
