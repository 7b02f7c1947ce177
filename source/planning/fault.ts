/** Why a brief cannot be read. `field` is the path in the file, such as `stripes[1].rows`. */
export type BriefFault =
  | { readonly code: 'brief/not-json'; readonly detail: string }
  | { readonly code: 'brief/unknown-key'; readonly field: string; readonly known: readonly string[] }
  | { readonly code: 'brief/missing'; readonly field: string }
  | {
      readonly code: 'brief/wrong-type';
      readonly field: string;
      readonly expected: string;
      readonly value: string;
    }
  | { readonly code: 'brief/not-whole'; readonly field: string; readonly value: string }
  | { readonly code: 'brief/not-even'; readonly field: string; readonly value: string }
  | {
      readonly code: 'brief/too-small';
      readonly field: string;
      readonly value: string;
      readonly least: number;
    }
  | {
      readonly code: 'brief/too-large';
      readonly field: string;
      readonly value: string;
      readonly most: number;
    }
  | { readonly code: 'brief/too-short'; readonly field: string }
  | { readonly code: 'brief/too-long'; readonly field: string; readonly most: number }
  | {
      readonly code: 'brief/not-one-of';
      readonly field: string;
      readonly value: string;
      readonly choices: readonly string[];
    }
  | { readonly code: 'brief/not-a-colour'; readonly field: string; readonly value: string }
  | { readonly code: 'brief/no-yarns' }
  | {
      readonly code: 'brief/unknown-yarn';
      readonly field: string;
      readonly yarn: string;
      readonly known: readonly string[];
    }
  | { readonly code: 'brief/reserved-yarn'; readonly yarn: string }
  | { readonly code: 'brief/waste-is-a-yarn'; readonly yarn: string }
  | { readonly code: 'brief/two-units'; readonly field: string; readonly other: string }
  | { readonly code: 'brief/two-loop-lengths' }
  | { readonly code: 'brief/stitch-impossible'; readonly what: 'wide' | 'high'; readonly sizeMm: number };

/** Why a sound brief gives no bag. Sizes in cm. */
export type PlanFault =
  | {
      readonly code: 'plan/rows-not-whole-repeats';
      readonly rows: number;
      readonly stepRows: number;
      readonly nearest: readonly number[];
    }
  | { readonly code: 'plan/too-few-stitches'; readonly stitches: number; readonly least: number }
  | {
      readonly code: 'plan/bed-too-short';
      readonly stitches: number;
      readonly usable: number;
      readonly greatestDepthCm: number | null;
    };
