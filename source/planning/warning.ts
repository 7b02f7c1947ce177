import type { RelaxedState } from './brief.ts';
import type { AlikeTo } from './shades.ts';
import type { YarnClass } from './yarn-class.ts';

/** What the maker should know before casting on. The bag can be made all the same. */
export type PlanWarning =
  | {
      readonly code: 'plan/yarn-short';
      readonly yarn: string;
      readonly shortGrams: number;
      readonly reservePercent: number;
    }
  | { readonly code: 'plan/scraps-unused'; readonly yarns: readonly string[] }
  /** Yarns on the mast at once: in the feeder or parked. */
  | { readonly code: 'plan/many-yarns-at-once'; readonly yarns: number }
  | { readonly code: 'plan/width-far-off'; readonly wantedCm: number; readonly gotCm: number }
  | { readonly code: 'plan/depth-far-off'; readonly wantedCm: number; readonly gotCm: number }
  /** What goes in is thicker than the boxed bottom is deep. */
  | { readonly code: 'plan/base-too-narrow'; readonly boxedCm: number; readonly thicknessCm: number }
  | { readonly code: 'plan/eyelets-too-few'; readonly made: number }
  | { readonly code: 'plan/rehang-needed'; readonly afterRows: readonly number[] }
  | { readonly code: 'plan/swatch-guessed' }
  | { readonly code: 'plan/swatch-to-be-washed'; readonly finishState: RelaxedState }
  | { readonly code: 'plan/swatch-turned'; readonly aspect: number }
  | { readonly code: 'plan/stitch-shape-odd'; readonly aspect: number }
  | { readonly code: 'plan/loop-length-odd'; readonly measuredMm: number; readonly modelMm: number }
  | { readonly code: 'plan/fabric-limp'; readonly tightness: number }
  | { readonly code: 'plan/fabric-jams'; readonly tightness: number }
  | { readonly code: 'plan/stitch-wider-than-pitch'; readonly stitchMm: number; readonly pitchMm: number }
  | {
      readonly code: 'plan/yarn-unusual-for-bed';
      readonly pitchMm: number;
      readonly than: 'finer' | 'thicker';
      readonly usual: readonly YarnClass[];
    }
  /** Neighbouring yarns that are hard to tell apart. */
  | {
      readonly code: 'plan/shades-alike';
      readonly first: string;
      readonly second: string;
      readonly to: AlikeTo;
    }
  | {
      readonly code: 'plan/stripes-alike';
      readonly first: number;
      readonly second: number;
      readonly yarn: string;
    };
