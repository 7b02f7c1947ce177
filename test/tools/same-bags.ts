/**
 * Random bags are the same ones in every run, so that a failure comes from a change and not from chance. Others:
 * `SLANTWISE_SEED=7 npm test`.
 */
import fc from 'fast-check';

fc.configureGlobal({ seed: Number(process.env.SLANTWISE_SEED ?? 1) });
