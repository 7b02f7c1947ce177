import { readBrief } from '../planning/parse-brief.ts';
import { planBag } from '../planning/plan-bag.ts';
import { fail, isGroup, type JsonGroup, type Result, succeed } from '../shared/result.ts';
import { type Job, layOutJob, phasesOf } from '../steps/job.ts';
import { phases } from '../steps/step.ts';
import type { JournalFault } from './fault.ts';
import { isInstant } from './notation.ts';

/** What a plan came to when its log was begun: enough to notice that another program plans the same brief otherwise. */
type PlanFigures = {
  readonly stitches: number;
  readonly rows: number;
  readonly shapings: number;
  readonly needlesUsed: number;
  readonly stepCount: number;
  readonly phaseStarts: readonly number[];
  /** Rows and edge needles of each stay on the bed, as `fromRow`, `throughRow`, `hungLeft`, `hungRight`. */
  readonly hangings: readonly (readonly [number, number, number, number])[];
};

export function figuresOf({ plan, stepCount, phaseStarts }: Job): PlanFigures {
  const { stitches, rows, shapings, needlesUsed } = plan;
  // A bag without a hem is what it was before there were any.
  const starts = phasesOf(plan).map((phase) => phaseStarts[phases.indexOf(phase)] ?? 0);
  const hangings = plan.hangings.map(
    ({ fromRow, throughRow, hungLeft, hungRight }) => [fromRow, throughRow, hungLeft, hungRight] as const,
  );
  return { stitches, rows, shapings, needlesUsed, stepCount, phaseStarts: starts, hangings };
}

/** The first figure that is not as recorded. Figures that the log does not have are not compared. */
function findDifference(
  recorded: JsonGroup,
  planned: PlanFigures,
): { readonly figure: string; readonly recorded: string; readonly planned: string } | null {
  for (const [figure, value] of Object.entries(planned)) {
    if (!Object.hasOwn(recorded, figure)) continue;
    const [was, is] = [JSON.stringify(recorded[figure]), JSON.stringify(value)];
    if (was !== is) return { figure, recorded: was, planned: is };
  }
  return null;
}

export const logFormat = 'slantwise-log';
/** The version that is written; older ones are read. */
const logVersion = 1;

/** The first line of a log: what is being made, and the plan as it stood then. */
export interface LogHeader {
  readonly name: string;
  /** Version of the program that began the log. */
  readonly program: string;
  /** The brief as the maker's file had it. */
  readonly brief: JsonGroup;
  readonly figures: JsonGroup;
  /** ISO 8601 in UTC. */
  readonly startedAt: string;
}

export const headerJson = (header: LogHeader): JsonGroup => {
  const { name, program, brief, figures, startedAt } = header;
  return { format: logFormat, version: logVersion, name, program, brief, figures, startedAt };
};

interface OpenedHeader {
  readonly header: LogHeader;
  readonly job: Job;
}

/** Reads the JSON of a first line whose checksum is right, and plans its brief again. */
export function readHeader(json: unknown): Result<OpenedHeader, JournalFault> {
  if (!isGroup(json) || json.format !== logFormat) return fail({ code: 'journal/not-a-log' });
  const { version } = json;
  if (typeof version === 'number' && version > logVersion) {
    return fail({ code: 'journal/newer-version', version, known: logVersion });
  }
  switch (version) {
    case 1:
      return readVersion1(json);
    default:
      return fail(damagedHeader);
  }
}

const damagedHeader: JournalFault = {
  code: 'journal/damaged-line',
  line: 1,
  reason: 'wrong-fields',
  laterStep: null,
};

function readVersion1(json: JsonGroup): Result<OpenedHeader, JournalFault> {
  const { name, program, brief, figures, startedAt } = json;
  if (typeof name !== 'string' || typeof program !== 'string') return fail(damagedHeader);
  if (typeof startedAt !== 'string' || !isInstant(startedAt) || !isGroup(figures)) return fail(damagedHeader);
  const read = readBrief(brief);
  const plan = read.ok ? planBag(read.value) : read;
  if (!plan.ok) return fail({ code: 'journal/brief', program, fault: plan.fault });
  if (name !== plan.value.brief.name) return fail(damagedHeader);
  const job = layOutJob(plan.value);
  const difference = findDifference(figures, figuresOf(job));
  if (difference) return fail({ code: 'journal/plan-differs', program, ...difference });
  return succeed({ header: { name, program, brief: brief as JsonGroup, figures, startedAt }, job });
}
