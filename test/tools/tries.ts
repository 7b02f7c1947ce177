/**
 * How many random bags a law tries: a quarter of the number beside it, which finds what a change breaks in nearly all
 * cases and keeps the tests short. `SLANTWISE_TRIES=1 npm test` tries them all, `SLANTWISE_TRIES=10` ten times as many.
 */
const share = Number(process.env.SLANTWISE_TRIES ?? 0.25);

/** Fewer than `fewest` find too little. */
export const tries = (all: number, fewest = 25): number =>
  Math.max(Math.min(all, fewest), Math.round(all * share));
