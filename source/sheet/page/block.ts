/** What stands on a page, as data: each kind of file paints it in its own way, and one measure of it fills the pages of all. */
import type { Step } from '../../steps/step.ts';
import type { Words } from '../../wording/words.ts';
import type { Drawing } from '../svg/element.ts';
import type { YarnSign } from '../yarn-signs.ts';
import type { StripeLines } from './stripe-lines.ts';

export const papers = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;
export type Paper = keyof typeof papers;

export interface SheetOptions {
  /** Printed as it is given. */
  readonly date: string;
  /** The maker's name for the bag; left out, the brief's. */
  readonly name?: string;
  readonly words: Words;
  /** What could hurt at a step; null where nothing new does. */
  readonly cautionOf: (step: Step) => string | null;
  /** For SVG, whose pages are drawn; HTML prints on either. */
  readonly paper?: Paper;
  /** For a class: with blanks for each pupil's own swatch. */
  readonly class?: boolean;
  /** Sentences to print near the top, such as the plan's warnings. */
  readonly remarks?: readonly string[];
}

export interface Detail {
  readonly label: string;
  readonly value: string;
}

/** What is filled in: after the label and after the value, of a sum only after it. */
export interface Blank extends Detail {
  readonly isSum?: true;
}

/** A sentence of the bench, with the caution that belongs to it. */
export interface Item {
  readonly text: string;
  readonly mind: string | null;
}

/** One yarn of the table, all in words. */
export interface YarnRow {
  readonly name: string;
  /** Null for yarns that no stripe and no cord is knitted of. */
  readonly sign: YarnSign | null;
  readonly use: string;
  readonly length: string;
  /** Weight with the reserve in it; blank where the thickness is unknown. */
  readonly weight: string;
  readonly have: string;
}

export type Block =
  | { readonly kind: 'heading'; readonly text: string; readonly note?: string }
  | { readonly kind: 'text'; readonly text: string; readonly quiet?: true }
  | { readonly kind: 'ruled'; readonly text: string }
  | { readonly kind: 'steps'; readonly items: readonly Item[]; readonly mind: string }
  /** Short steps one after the other in a paragraph, its heading the first of it. */
  | {
      readonly kind: 'run';
      readonly head: string | null;
      readonly items: readonly Item[];
      readonly mind: string;
    }
  | { readonly kind: 'terms'; readonly terms: readonly (readonly [word: string, means: string])[] }
  /** `plain` draws it in letters, for files of text alone. */
  | { readonly kind: 'figure'; readonly drawing: Drawing; readonly plain: () => readonly string[] }
  | { readonly kind: 'numbers'; readonly numbers: readonly { readonly value: string; readonly of: string }[] }
  | { readonly kind: 'facts'; readonly facts: readonly Detail[] }
  | { readonly kind: 'yarns'; readonly rows: readonly YarnRow[]; readonly titles: readonly string[] }
  | {
      readonly kind: 'stripes';
      readonly columns: readonly (readonly StripeLines[])[];
      readonly across: Across;
    }
  | { readonly kind: 'blanks'; readonly blanks: readonly Blank[] }
  /** A list to write in: columns with a title each, and so many lines. */
  | { readonly kind: 'register'; readonly titles: readonly string[]; readonly count: number }
  | { readonly kind: 'lines'; readonly count: number }
  /** `even`: columns of text, each as wide as the other. */
  | { readonly kind: 'beside'; readonly parts: readonly Beside[]; readonly even?: true }
  /** Never split between pages. */
  | { readonly kind: 'together'; readonly blocks: readonly Block[] };

export const figure = (drawing: Drawing, plain: () => readonly string[]): Block => ({
  kind: 'figure',
  drawing,
  plain,
});

/** How many columns a list of stripes has. */
export type Across = 2 | 3;

/** One of several columns; the page's width is shared out by `widthMm`. */
export interface Beside {
  readonly widthMm: number;
  readonly blocks: readonly Block[];
}

export type Station = 'desk' | 'machine' | 'lap';

/** A page belongs to one place of work, and its letters are large enough to be read there. */
export interface SheetPage {
  readonly place: Station;
  readonly blocks: readonly Block[];
}

export interface Sheet {
  readonly title: string;
  readonly date: string;
  readonly lead: string;
  readonly pages: readonly SheetPage[];
}

/** Sizes of a place's letters, in mm: at the desk and in the lap some 40 cm away, at the machine as far as a metre. */
export interface Type {
  readonly size: number;
  readonly leading: number;
  readonly heading: number;
  readonly title: number;
  /** Between one block and the next. */
  readonly gap: number;
}

const points = (count: number): number => (count * 25.4) / 72;

export const types: Readonly<Record<Station, Type>> = {
  desk: { size: points(9), leading: 3.75, heading: points(12.5), title: points(24), gap: 3 },
  machine: { size: points(13), leading: 5.3, heading: points(17), title: points(18), gap: 2 },
  lap: { size: points(9), leading: 3.75, heading: points(12.5), title: points(20), gap: 4.2 },
};

/** Of every page. */
export const marginMm = { top: 8, side: 14 } as const;
/** Between the sides of A4, which is the narrower paper. */
export const columnMm = 182;
/** Between columns. */
export const besideGapMm = 6;

/** One of two columns of text. */
export const halfMm = (columnMm - besideGapMm) / 2;

export const twoColumns = (left: readonly Block[], right: readonly Block[]): Block => ({
  ...besideColumns(halfMm, left, right),
  even: true,
});

/** A heading and what stands under it, on one page. */
export const together = (text: string, blocks: readonly Block[], note?: string): Block => ({
  kind: 'together',
  blocks: [{ kind: 'heading', text, ...(note === undefined ? {} : { note }) }, ...blocks],
});

type Terms = (Block & { kind: 'terms' })['terms'];

/** As many of the terms in the left column as come nearest to half of their letters. */
export function termsInColumns(terms: Terms): Block {
  const letters = terms.map(([word, means]) => word.length + means.length);
  const all = letters.reduce((sum, count) => sum + count, 0);
  const lead = letters.map((_, i) => letters.slice(0, i + 1).reduce((sum, count) => sum + count, 0));
  const half = 1 + lead.findIndex((sum, i) => all - 2 * sum <= 2 * (lead[i + 1] ?? all) - all);
  return twoColumns(
    [{ kind: 'terms', terms: terms.slice(0, half) }],
    [{ kind: 'terms', terms: terms.slice(half) }],
  );
}

/** Two columns, the left one so wide. */
export const besideColumns = (
  leftMm: number,
  left: readonly Block[],
  right: readonly Block[],
): Block & { kind: 'beside' } => ({
  kind: 'beside',
  parts: [
    { widthMm: leftMm, blocks: left },
    { widthMm: columnMm - besideGapMm - leftMm, blocks: right },
  ],
});
