/** What the questions ask for: the answers make a brief. */

import type { ShapeEveryRows } from '../../planning/choose-size.ts';
import type { BriefFault } from '../../planning/fault.ts';
import type { KeptBed, KeptSwatch } from '../../planning/shelf.ts';
import type { Contents, MeasuredSwatch, UsualThing } from '../../planning/usual.ts';
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
  /** Stitches that move at each edge. */
  readonly edges: 1 | 2 | 3;
}

/** A size; what goes in; as deep as the needles of the bed allow in one hanging; or the counts themselves. */
export type SizeAnswer = (
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
