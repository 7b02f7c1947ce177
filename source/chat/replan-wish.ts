/** An amount with the unit typed behind it; null where the maker's own units are meant. */
export interface Amount {
  readonly value: number;
  readonly unit: 'mm' | 'cm' | 'in' | 'g' | 'oz' | null;
}

/** What the scales show of a yarn. */
export interface Weighed {
  readonly yarn: string;
  readonly amount: Amount;
}

export interface ReplanWish {
  /** A width over so many stitches, a height over so many rows, measured on the piece. */
  readonly stitches: { readonly count: number; readonly length: Amount } | null;
  readonly rows: { readonly count: number; readonly length: Amount } | null;
  readonly weighed: readonly Weighed[];
  readonly recolour: {
    readonly from: string;
    readonly to: string;
    readonly colour: string | null;
    readonly metresPer100g: number | null;
  } | null;
  /** Which lengths to show: all, only shorter, only longer, or this many rows round. */
  readonly want: 'any' | 'shorter' | 'longer' | number;
}
