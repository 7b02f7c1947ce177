/** What a maker keeps under names: beds, swatches and yarns, as a brief has them. A brief may name them in place of their figures. */
import * as v from 'valibot';
import { fail, isGroup, type JsonGroup, type Result, succeed } from '../shared/result.ts';
import type { Brief, Yarn } from './brief.ts';
import { bedSchema, swatchSchema, yarnSchema } from './brief-schema.ts';
import type { BriefFault } from './fault.ts';

export type KeptBed = v.InferOutput<typeof bedSchema>;
export type KeptSwatch = v.InferOutput<typeof swatchSchema>;

export interface KeptYarn extends Yarn {
  /** ISO 8601 in UTC: bags begun from then on take from these grams. */
  readonly since: string;
}

export interface Shelf {
  readonly beds: Readonly<Record<string, KeptBed>>;
  readonly swatches: Readonly<Record<string, KeptSwatch>>;
  readonly yarns: Readonly<Record<string, KeptYarn>>;
}

export type ShelfKind = 'bed' | 'swatch' | 'yarn';

export const shelfKinds: readonly ShelfKind[] = ['bed', 'swatch', 'yarn'];

export const emptyShelf: Shelf = { beds: {}, swatches: {}, yarns: {} };

const shelfSchema = v.object({
  beds: v.record(v.string(), bedSchema),
  swatches: v.record(v.string(), swatchSchema),
  yarns: v.record(v.string(), v.object({ ...yarnSchema.entries, since: v.string() })),
});

/** Null where it is no shelf. */
export function readShelf(json: unknown): Shelf | null {
  const read = v.safeParse(shelfSchema, json);
  if (!read.success) return null;
  const yarns = Object.entries(read.output.yarns).map(([name, yarn]) => [
    name,
    { ...yarn, grams: yarn.grams ?? null, pricePer100g: yarn.pricePer100g ?? null },
  ]);
  return { ...read.output, yarns: Object.fromEntries(yarns) };
}

/** As `readShelf` reads it. */
export const shelfJson = (shelf: Shelf): object => ({
  ...shelf,
  yarns: Object.fromEntries(Object.entries(shelf.yarns).map(([name, yarn]) => [name, withoutNull(yarn)])),
});

export const withoutNull = (fields: object): object =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null));

const groups = { bed: 'beds', swatch: 'swatches', yarn: 'yarns' } as const;

/** The name as it is kept, whatever capitals were typed; null where nothing is called so. */
export function nameOnShelf(shelf: Shelf, kind: ShelfKind, typed: string): string | null {
  const wanted = typed.trim().toLowerCase();
  return namesOn(shelf, kind).find((name) => name.toLowerCase() === wanted) ?? null;
}

export const namesOn = (shelf: Shelf, kind: ShelfKind): readonly string[] => Object.keys(shelf[groups[kind]]);

export const withKept = (shelf: Shelf, kind: ShelfKind, name: string, kept: object): Shelf => ({
  ...shelf,
  [groups[kind]]: { ...shelf[groups[kind]], [name]: kept },
});

export const without = (shelf: Shelf, kind: ShelfKind, name: string): Shelf => ({
  ...shelf,
  [groups[kind]]: Object.fromEntries(Object.entries(shelf[groups[kind]]).filter(([other]) => other !== name)),
});

/** A swatch as it is kept; null for a guess, which is none. */
export function swatchToKeep({ swatch }: Brief): KeptSwatch | null {
  const { stitches, rows, widthMm, heightMm, state, asideMm, loopLengthMm, stitchSize, guess } = swatch;
  if (guess) return null;
  const size = { stitches, rows, widthCm: widthMm / 10, heightCm: heightMm / 10, state };
  return { ...size, asideCm: asideMm / 10, ...(withoutNull({ loopLengthMm, stitchSize }) as object) };
}

/** A yarn of the shelf as a brief has it. */
export const yarnOf = ({ since: _, ...yarn }: KeptYarn): object => withoutNull(yarn);

/** Whether anything in a brief's JSON is a name of something kept. */
export const namesShelf = (json: unknown): json is JsonGroup =>
  isGroup(json) &&
  (typeof json.bed === 'string' ||
    typeof json.swatch === 'string' ||
    (Array.isArray(json.yarns) && json.yarns.every((name) => typeof name === 'string')) ||
    (isGroup(json.yarns) && Object.values(json.yarns).some((yarn) => typeof yarn === 'string')));

/** The JSON with what is kept in place of its names: `"bed": "workroom"`, `"yarns": ["plum", "mint"]`, `"yarns": {"sky": "blue wool"}`. */
export function takeFromShelf(json: JsonGroup, shelf: Shelf): Result<JsonGroup, BriefFault> {
  const bed = kept(shelf, 'bed', json.bed);
  if (!bed.ok) return bed;
  const swatch = kept(shelf, 'swatch', json.swatch);
  if (!swatch.ok) return swatch;
  const yarns = takeYarns(json.yarns, shelf);
  if (!yarns.ok) return yarns;
  return succeed({ ...json, bed: bed.value, swatch: swatch.value, yarns: yarns.value });
}

/** What is no name stays as it is. */
function kept(shelf: Shelf, kind: ShelfKind, value: unknown): Result<unknown, BriefFault> {
  if (typeof value !== 'string') return succeed(value);
  const name = nameOnShelf(shelf, kind, value);
  if (name === null)
    return fail({ code: 'brief/not-on-shelf', kind, name: value, known: namesOn(shelf, kind) });
  if (kind === 'yarn') return succeed(yarnOf(shelf.yarns[name] as KeptYarn));
  return succeed(shelf[groups[kind]][name]);
}

function takeYarns(yarns: unknown, shelf: Shelf): Result<unknown, BriefFault> {
  if (!Array.isArray(yarns) && !isGroup(yarns)) return succeed(yarns);
  const named = Array.isArray(yarns)
    ? yarns.map((name) => [String(name), String(name)] as const)
    : Object.entries(yarns);
  const taken: [string, unknown][] = [];
  for (const [name, value] of named) {
    const yarn = kept(shelf, 'yarn', value);
    if (!yarn.ok) return yarn;
    taken.push([name, yarn.value]);
  }
  return succeed(Object.fromEntries(taken));
}
