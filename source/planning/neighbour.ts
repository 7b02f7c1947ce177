/** Another choice of counts for the same wish, and the size it gives. */
export interface Neighbour {
  readonly stitches: number;
  readonly rows: number;
  readonly widthCm: number;
  readonly depthCm: number;
  /** The bed has room for it to crawl. */
  readonly fitsBed: boolean;
}
