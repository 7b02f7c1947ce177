/** What the questions ask for: the answers make a brief. */

import * as v from 'valibot';
import { bedSchema, swatchSchema, yarnSchema } from '../../planning/brief-schema.ts';
import type { ShapeEveryRows } from '../../planning/choose-size.ts';
import type { BriefFault } from '../../planning/fault.ts';
import { type KeptBed, type KeptSwatch, nameOnShelf, type Shelf, yarnOf } from '../../planning/shelf.ts';
import type { Contents, MeasuredSwatch, UsualThing } from '../../planning/usual.ts';
import { jsonIn } from '../../shared/result.ts';
import type { Units } from '../../shared/units.ts';

export type Length = Units['length'];

export interface YarnAnswer {
  readonly name: string;
  /** Null leaves it to a rule of thumb; so does `metresPer100g`. */
  readonly colour: string | null;
  readonly metresPer100g: number | null;
  /** The length is no label's: it goes by the name of the yarn's weight. */
  readonly isUsualLength: boolean;
  readonly grams: number | null;
}

export interface Values {
  readonly name: string;
  readonly size: SizeAnswer;
  readonly bed: KeptBed;
  /** Null where nobody has swatched yet: the bed is taken for a guess. */
  readonly swatch: (MeasuredSwatch & Partial<KeptSwatch>) | null;
  readonly first: YarnAnswer;
  /** The other yarns, in the order of their stripes; none knits all in the first. */
  readonly second: readonly YarnAnswer[];
  readonly stripes: StripesAnswer;
  readonly slant: SlantAnswer;
  /** Cords to draw the bag shut with. */
  readonly cord: 1 | 2;
  readonly edges: EdgesAnswer;
}

/** A size; what goes in; as deep as the needles of the bed allow in one hanging; or the counts themselves. */
type SizeAnswer = (
  | { readonly widthCm: number; readonly depthCm: number }
  /** `usual` where its measures are those of the thing that was named. */
  | (Contents & { readonly usual?: UsualThing })
  | { readonly widthCm: number; readonly deepAsBed: true }
  | { readonly stitches: number; readonly rows: number }
) & {
  /** The depth of a bottom with boxed corners. */
  readonly boxedCm?: number;
};

/** Rows or widths of a stripe, one number for each yarn, the last for all that are left; or an order of the program's own. */
export type StripesAnswer =
  | readonly number[]
  | { readonly widthsCm: readonly number[] }
  | 'random'
  | 'gradient';

/** Stitches that move at each edge, and the plain rows of each layer of a hem at the mouth; null without one. */
export interface EdgesAnswer {
  readonly stitches: 1 | 2 | 3;
  readonly hemRows: number | null;
}

export type SlantAnswer = { readonly everyRows: ShapeEveryRows } | { readonly angleDeg: number };

export type QuestionId = keyof Values;

/** The easy ones first; the swatch once the bed is known, which gives its guess. */
export const questionIds = [
  'name',
  'size',
  'bed',
  'swatch',
  'first',
  'second',
  'stripes',
  'slant',
  'cord',
  'edges',
] as const satisfies readonly QuestionId[];

/** Never asked, since what is usual does for nearly all: answered by `change` alone. */
export const unasked: ReadonlySet<QuestionId> = new Set(['cord', 'edges']);

/** An answer as it was typed, with the length that bare numbers meant; an empty line takes what is usual. */
export interface Given {
  readonly line: string;
  readonly length: Length;
}

export type Answers = Readonly<Partial<Record<QuestionId, Given>>>;

/** Why a line is no answer. */
export type AnswerFault =
  | {
      readonly code: 'first-run/not-understood';
      readonly question: QuestionId;
      /** The word that makes no sense; null where something lacks. */
      readonly word: string | null;
    }
  | { readonly code: 'first-run/which-is-which' }
  | { readonly code: 'first-run/yarn-without-name' }
  /** Numbers or commas are left that nothing was made of. */
  | { readonly code: 'first-run/odd-yarn-name'; readonly name: string }
  /** A question where a name is asked for. */
  | { readonly code: 'first-run/question-as-name'; readonly name: string }
  /** Of a swatch that is guided: a length is wanted, or Enter. */
  | { readonly code: 'first-run/not-a-measure'; readonly step: 'width' | 'height' | 'aside' | 'row-yarn' }
  | { readonly code: 'first-run/enter-when-done' }
  | { readonly code: 'first-run/same-yarn'; readonly yarn: string }
  /** Numbers are left over for which there is no yarn. */
  | { readonly code: 'first-run/more-stripes-than-yarns'; readonly yarns: readonly string[] }
  /** As deep as the bed: the moves alone take all its needles. */
  | { readonly code: 'first-run/bed-too-short'; readonly widthCm: number }
  | BriefFault;

/**
 * Answers that come from somewhere else than the keyboard: something on the shelf that was named, or a swatch that was guided.
 * They are kept among the answers as the JSON of a brief, and read as they stand.
 */

/** The answer in place of a name on the shelf; null where the line is no such name. */
export function fromShelf(id: QuestionId, line: string, shelf: Shelf): string | null {
  const kind = id === 'first' || id === 'second' ? 'yarn' : id === 'bed' || id === 'swatch' ? id : null;
  const name = kind && nameOnShelf(shelf, kind, line);
  if (name === null) return null;
  const yarn = shelf.yarns[name];
  if (kind === 'bed') return JSON.stringify(shelf.beds[name]);
  if (kind === 'swatch') return JSON.stringify(shelf.swatches[name]);
  return yarn ? JSON.stringify({ name, ...yarnOf(yarn) }) : null;
}

const measured = v.strictObject({ ...swatchSchema.entries, widthCm: v.number(), heightCm: v.number() });
const named = v.strictObject({ name: v.string(), ...yarnSchema.entries });

/** The value of an answer that is JSON; null where it is none. */
export function readKept<Id extends QuestionId>(id: Id, line: string): Values[Id] | null {
  return line.startsWith('{') ? (readValue(id, jsonIn(line)) as Values[Id] | null) : null;
}

function readValue(id: QuestionId, json: unknown): unknown {
  switch (id) {
    case 'bed':
      return read(bedSchema, json);
    case 'swatch':
      return read(measured, json);
    case 'first':
    case 'second':
      return yarnIn(json);
    default:
      return null;
  }
}

function yarnIn(json: unknown): YarnAnswer | null {
  const yarn = read(named, json);
  return yarn && { ...yarn, grams: yarn.grams ?? null, isUsualLength: false };
}

function read<Schema extends v.GenericSchema>(schema: Schema, json: unknown): v.InferOutput<Schema> | null {
  const found = v.safeParse(schema, json);
  return found.success ? found.output : null;
}
