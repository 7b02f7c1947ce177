export interface Neighbour {
  readonly stitches: number;
  readonly rows: number;
  readonly widthCm: number;
  readonly depthCm: number;
  /** The bed has room for it to crawl. */
  readonly fitsBed: boolean;
}
