/**
 * What people put into such bags, by usual measures: rules of thumb, no source, to be measured where it matters. A deck is in
 * its box, seven dice lie in a heap, a jar holds about 350 g, socks are rolled up, and a book is a small paperback.
 */
export interface Contents {
  readonly girthCm: number;
  readonly heightCm: number;
  /** What lies on the bottom and has to be closed over; left out, the thing is round. */
  readonly thicknessCm?: number;
}

export const usualContents = {
  cards: { girthCm: 17, heightCm: 9, thicknessCm: 2 },
  dice: { girthCm: 20, heightCm: 4, thicknessCm: 6 },
  jar: { girthCm: 24, heightCm: 11 },
  socks: { girthCm: 28, heightCm: 10, thicknessCm: 8 },
  book: { girthCm: 27, heightCm: 18, thicknessCm: 2.5 },
} satisfies Readonly<Record<string, Contents>>;

export type UsualThing = keyof typeof usualContents;

/** The girth of a box that stands as high as it is told. */
export const boxContents = (widthCm: number, heightCm: number, thicknessCm: number): Contents => ({
  girthCm: 2 * (widthCm + thicknessCm),
  heightCm,
  thicknessCm,
});
