import type { JsonSlip } from './json-slip.ts';

/** Another choice of counts for the same wish, and the size it gives. */
export interface Neighbour {
  readonly stitches: number;
  readonly rows: number;
  readonly widthCm: number;
  readonly depthCm: number;
  /** The bed has room for it to crawl. */
  readonly fitsBed: boolean;
}

/** What the file should hold in a place: text in quotes, a group in braces, a list in brackets. */
export type JsonKind = 'number' | 'text' | 'group' | 'list';

/** What stands in a field of the file. */
interface InField {
  readonly field: string;
  readonly value: unknown;
}

/**
 * Why a brief cannot be read. `field` is the path in the file, such as `stripes[1].rows`, and '' the brief itself;
 * `value` is what the file has there.
 */
export type BriefFault =
  | { readonly code: 'brief/empty' }
  | { readonly code: 'brief/too-big'; readonly characterCount: number; readonly most: number }
  | {
      readonly code: 'brief/not-json';
      readonly line: number;
      readonly column: number;
      readonly slip: JsonSlip;
      readonly found: string;
    }
  | {
      readonly code: 'brief/unknown-key';
      readonly field: string;
      readonly key: string;
      readonly known: readonly string[];
    }
  | { readonly code: 'brief/missing'; readonly field: string }
  | (InField & { readonly code: 'brief/wrong-type'; readonly expected: JsonKind })
  | (InField & { readonly code: 'brief/not-whole' })
  | (InField & { readonly code: 'brief/not-even' })
  | (InField & { readonly code: 'brief/too-small'; readonly least: number })
  | (InField & { readonly code: 'brief/too-large'; readonly most: number })
  | { readonly code: 'brief/too-short'; readonly field: string }
  | { readonly code: 'brief/too-long'; readonly field: string; readonly most: number }
  | (InField & { readonly code: 'brief/not-one-of'; readonly choices: readonly (string | number)[] })
  | (InField & { readonly code: 'brief/not-a-colour' })
  | (InField & { readonly code: 'brief/not-a-name' })
  | { readonly code: 'brief/no-size' }
  | { readonly code: 'brief/two-sizes'; readonly keys: readonly string[] }
  | { readonly code: 'brief/no-yarns' }
  | {
      readonly code: 'brief/unknown-yarn';
      readonly field: string;
      readonly yarn: string;
      readonly known: readonly string[];
    }
  /** A name that stands where figures could stand, and nothing on the shelf is called so. */
  | {
      readonly code: 'brief/not-on-shelf';
      readonly kind: 'bed' | 'swatch' | 'yarn';
      readonly name: string;
      readonly known: readonly string[];
    }
  | { readonly code: 'brief/reserved-yarn'; readonly yarn: string }
  | { readonly code: 'brief/waste-is-a-yarn'; readonly yarn: string }
  | { readonly code: 'brief/stripes-and-scraps' }
  | { readonly code: 'brief/scrap-not-weighed'; readonly yarn: string }
  | { readonly code: 'brief/two-units'; readonly field: string; readonly other: string }
  | { readonly code: 'brief/two-loop-lengths' }
  | { readonly code: 'brief/stitch-impossible'; readonly what: 'wide' | 'high'; readonly sizeMm: number };

/** Why a sound brief gives no bag. Sizes in cm. */
export type PlanFault =
  | {
      readonly code: 'plan/rows-not-whole-repeats';
      readonly rows: number;
      readonly rowMultiple: number;
      readonly nearest: readonly number[];
    }
  | { readonly code: 'plan/too-few-stitches'; readonly stitches: number; readonly least: number }
  | {
      readonly code: 'plan/bed-too-short';
      readonly stitches: number;
      readonly usable: number;
      /** The deepest bag of the same rows that the bed has room for; null where it has room for none. */
      readonly nearest: Neighbour | null;
    }
  /** A boxed bottom that would leave no base, or no side below the cord. */
  | { readonly code: 'plan/boxed-too-deep'; readonly boxedCm: number; readonly belowCm: number }
  | { readonly code: 'plan/scraps-cord-short'; readonly yarn: string; readonly shortGrams: number }
  /** No scrap is long enough to knit the last stripe, graft and sew. */
  | { readonly code: 'plan/scraps-no-closer'; readonly scraps: readonly string[] }
  | {
      readonly code: 'plan/scraps-too-little';
      /** Stripes of the bag asked for, and how many the scraps can knit. */
      readonly stripes: number;
      readonly stripeRows: number;
      readonly possible: number;
      /** The most stripes one yarn can knit, since neighbours differ. */
      readonly everyOther: number;
      readonly scraps: readonly { readonly yarn: string; readonly stripes: number }[];
      /** The largest bag that they do make; null where there is none. */
      readonly largest: Neighbour | null;
    }
  | { readonly code: 'plan/yarn-not-weighed' }
  | {
      readonly code: 'plan/yarn-for-no-bag';
      readonly yarn: string;
      /** What is lacking for the smallest bag of the shape. */
      readonly shortGrams: number;
      readonly smallest: Neighbour;
    };
