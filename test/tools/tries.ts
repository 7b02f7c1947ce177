/**
 * Random bags are the same ones in every run, so that a failure comes from a change and not from chance. Others:
 * `SLANTWISE_SEED=7 npm test`.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.SLANTWISE_SEED ?? 1) });

/**
 * How many random bags a law tries: a quarter of the number beside it, which finds what a change breaks in nearly all
 * cases and keeps the tests short. `SLANTWISE_TRIES=1 npm test` tries them all, `SLANTWISE_TRIES=10` ten times as many.
 */
const share = Number(process.env.SLANTWISE_TRIES ?? 0.25);

/** Fewer than `fewest` find too little. */
export const tries = (all: number, fewest = 25): number =>
  Math.max(Math.min(all, fewest), Math.round(all * share));
