/** What the questions ask for: seven answers make a brief. */
import type { BriefFault } from '../../planning/fault.ts';
import type { KeptBed, KeptSwatch } from '../../planning/shelf.ts';
import type { Contents, UsualThing } from '../../planning/usual-contents.ts';
import type { MeasuredSwatch } from '../../planning/usual-swatch.ts';
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
  readonly size:
    | { readonly widthCm: number; readonly depthCm: number }
    /** What goes in; `usual` where its measures are those of the thing that was named. */
    | (Contents & { readonly usual?: UsualThing });
  readonly bed: KeptBed;
  /** Null where nobody has swatched yet: the bed is taken for a guess. */
  readonly swatch: (MeasuredSwatch & Partial<KeptSwatch>) | null;
  readonly first: YarnAnswer;
  /** Null knits all in the first. */
  readonly second: YarnAnswer | null;
  /** Rows of a stripe, one number for each yarn. */
  readonly stripes: readonly [number, number];
}

export type QuestionId = keyof Values;

/** The easy ones first; the swatch once the bed is known, which gives its guess. */
export const questionIds = ['name', 'size', 'bed', 'swatch', 'first', 'second', 'stripes'] as const;

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
  | { readonly code: 'first-run/same-yarn'; readonly yarn: string }
  | BriefFault;
