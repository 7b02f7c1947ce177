/** What a maker says of the bench, and what is known of the bag for reading it. */
import type { Moment } from '../session/diagnose/diagnose.ts';
import type { Look } from '../session/locate/seen.ts';
import { yarnsSeen } from '../session/locate/seen.ts';
import type { Job } from '../steps/job.ts';

/** What is known of the bag that is on the needles, for names and numbers that could be read two ways. */
export interface Known {
  readonly yarns: readonly string[];
  readonly knittedRows: number;
  /** Rows of the highest stripe. */
  readonly stripeRows: number;
}

export const nothingKnown: Known = { yarns: [], knittedRows: 0, stripeRows: 0 };

export const knownOf = (job: Job): Known => ({
  yarns: yarnsSeen(job),
  knittedRows: job.plan.knittedRows,
  stripeRows: Math.max(...job.plan.stripes.map(({ rows }) => rows)),
});

/** What a line says. */
export interface Told {
  readonly seen: Look;
  readonly moment: Moment | null;
  /** A row that may be one of the counter or one of the stripe. */
  readonly askRow: number | null;
  /** A single stitch has dropped. */
  readonly ladder: boolean;
  readonly leftOut: readonly string[];
}

export const nothingTold: Told = { seen: {}, moment: null, askRow: null, ladder: false, leftOut: [] };

/** Whether a line without a command says anything that could be seen. */
export const saysSomething = ({ seen, moment, ladder, askRow }: Told): boolean =>
  Object.keys(seen).length > 0 || moment !== null || ladder || askRow !== null;
