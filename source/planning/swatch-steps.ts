/** A swatch to be knitted by guidance: cast on 40, knit 60, rest, measure (common practice). */
import { formatNeedle } from '../bed/needles.ts';
import type { KeptBed, KeptSwatch } from './shelf.ts';

/** As large as a swatch should be, where the bed has room. */
const most = { stitches: 40, rows: 60 } as const;
/** As many rows as are counted at one go. */
const rowsAtOnce = 10;

export type SwatchStep =
  /** Typed: what the dial shows. */
  | { readonly is: 'dial' }
  | {
      readonly is: 'cast-on';
      readonly stitches: number;
      readonly first: string;
      readonly last: string;
      readonly comb: boolean;
    }
  | { readonly is: 'thread' }
  | { readonly is: 'rows'; readonly from: number; readonly through: number; readonly of: number }
  | { readonly is: 'take-off' }
  | { readonly is: 'rest' }
  /** Typed: lengths. */
  | { readonly is: 'width'; readonly stitches: number }
  | { readonly is: 'height'; readonly rows: number }
  | { readonly is: 'aside' }
  | { readonly is: 'row-yarn'; readonly stitches: number };

/** What has been typed on the way. */
export interface SwatchSoFar {
  /** Steps that are done. */
  readonly at: number;
  readonly stitchSize?: string;
  readonly widthCm?: number;
  readonly heightCm?: number;
  readonly asideCm?: number;
  readonly rowYarnCm?: number;
}

const stitchesOn = ({ needles }: KeptBed): number =>
  Math.min(most.stitches, 2 * Math.floor((needles - 4) / 2));

export function swatchSteps(bed: KeptBed): readonly SwatchStep[] {
  const stitches = stitchesOn(bed);
  const first = Math.floor((bed.needles - stitches) / 2);
  const name = (place: number): string => formatNeedle(bed.needles, place);
  const comb = !(bed.without ?? []).includes('comb');
  return [
    { is: 'dial' },
    { is: 'cast-on', stitches, first: name(first), last: name(first + stitches - 1), comb },
    { is: 'thread' },
    ...Array.from({ length: most.rows / rowsAtOnce }, (_, i): SwatchStep => {
      const from = i * rowsAtOnce + 1;
      return { is: 'rows', from, through: from + rowsAtOnce - 1, of: most.rows };
    }),
    { is: 'take-off' },
    { is: 'rest' },
    { is: 'width', stitches },
    { is: 'height', rows: most.rows },
    { is: 'aside' },
    { is: 'row-yarn', stitches },
  ];
}

/** Where a straight swatch was looked at, so that it counts as measured. */
const straightCm = 0.1;

/** The swatch once all is measured; null before. */
export function swatchFrom(
  bed: KeptBed,
  { stitchSize, widthCm, heightCm, asideCm, rowYarnCm }: SwatchSoFar,
): KeptSwatch | null {
  if (widthCm === undefined || heightCm === undefined) return null;
  return {
    stitches: stitchesOn(bed),
    rows: most.rows,
    widthCm,
    heightCm,
    state: 'wet-relaxed',
    ...(asideCm === undefined ? {} : { asideCm: asideCm === 0 ? straightCm : asideCm }),
    ...(rowYarnCm === undefined ? {} : { rowYarnCm }),
    ...(stitchSize === undefined ? {} : { stitchSize }),
  };
}
